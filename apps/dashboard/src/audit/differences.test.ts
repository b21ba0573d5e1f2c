import { expect, it } from 'vitest';
import { differences } from './differences.ts';

it('tells only what differs, by its name in words', () => {
  expect(
    differences({ rig: 'sloop', builtYear: 2001, version: 1 }, { rig: 'ketch', builtYear: 2001, version: 2 }),
  ).toEqual([{ property: 'rig', before: 'sloop', after: 'ketch' }]);
});

it('reads lists, parts, yes and no; what was never there is no difference', () => {
  const after = { schemes: ['solas', 'own'], identifiers: { mmsi: '232123456' }, planned: false, note: null };
  expect(differences(undefined, after)).toEqual([
    { property: 'schemes', before: '–', after: 'solas, own' },
    { property: 'identifiers', before: '–', after: 'mmsi 232123456' },
    { property: 'planned', before: '–', after: 'no' },
  ]);
});
