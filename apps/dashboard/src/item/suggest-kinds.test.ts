import { expect, test } from 'vitest';
import { suggestKinds } from './suggest-kinds.ts';

const KINDS = [
  { id: 'gas_hose', name: 'gas (LPG) hose' },
  { id: 'gas_regulator', name: 'gas (LPG) regulator' },
  { id: 'fuel_hose', name: 'fuel hose' },
  { id: 'liferaft', name: 'inflatable liferaft' },
  { id: 'liferaft_packed_contents', name: 'dated contents packed in a liferaft' },
  { id: 'epirb', name: 'emergency beacon (EPIRB)' },
  { id: 'portable_extinguisher_dry_powder', name: 'portable extinguisher, dry powder' },
  { id: 'portable_extinguisher_co2', name: 'portable extinguisher, carbon dioxide' },
  { id: 'navigation_lights', name: 'navigation lights' },
];
const suggested = (text: string) => suggestKinds(KINDS, text).map(({ id }) => id);

test('the kind with the most of the words goes alone, whatever their order and number', () => {
  expect(suggested('Gas hose, cooker')).toEqual(['gas_hose']);
  expect(suggested('hoses for the gas')).toEqual(['gas_hose']);
  expect(suggested('LPG regulator')).toEqual(['gas_regulator']);
});

test('where several fit alike, the one told most fully goes first', () => {
  expect(suggested('hose')).toEqual(['fuel_hose', 'gas_hose']);
  expect(suggested('Liferaft, 8 persons')).toEqual(['liferaft', 'liferaft_packed_contents']);
});

test('a word that is still being typed, and one of the id, are enough', () => {
  expect(suggested('liferaf')).toContain('liferaft');
  expect(suggested('EPIRB')).toEqual(['epirb']);
  expect(suggested('CO2 extinguisher')).toEqual(['portable_extinguisher_co2']);
  expect(suggested('navigation light')).toEqual(['navigation_lights']);
});

test('words that fit nothing, one letter or none suggest nothing', () => {
  expect([suggested('cuddly toy'), suggested('g'), suggested('  '), suggested('of the')]).toEqual([[], [], [], []]);
});

test('never more than four', () => {
  const many = Array.from({ length: 9 }, (_, n) => ({ id: `pump_${n}`, name: `pump ${n}` }));
  expect(suggestKinds(many, 'pump')).toHaveLength(4);
});
