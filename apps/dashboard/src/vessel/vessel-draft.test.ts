import { expect, test } from 'vitest';
import { emptyVessel, toNewVessel } from './vessel-draft.ts';

const teal = { ...emptyVessel, name: ' Teal ' };

test('her name is enough; what is not typed is not sent', () => {
  expect(toNewVessel(teal)).toEqual({ kind: 'ready', body: { name: 'Teal', schemes: [] } });
});

test('what is typed is sent, trimmed', () => {
  const all = { ...teal, type: ' sloop', lengthOverallM: '9.6', timeZone: 'Europe/Oslo', schemes: ['solas'] as const };
  expect(toNewVessel(all)).toEqual({
    kind: 'ready',
    body: { name: 'Teal', type: 'sloop', lengthOverallM: 9.6, timeZone: 'Europe/Oslo', schemes: ['solas'] },
  });
});

test.each([
  ['9.6', 9.6],
  ['9,6', 9.6],
  ['10 m', 10],
])('a length is read as it is written: %s', (lengthOverallM, metres) => {
  expect(toNewVessel({ ...teal, lengthOverallM })).toMatchObject({ body: { lengthOverallM: metres } });
});

test.each(['0', '-3', 'long', '31 ft', '9.6.1'])('what is no length in metres is asked again: %s', (lengthOverallM) => {
  expect(toNewVessel({ ...teal, lengthOverallM })).toMatchObject({
    kind: 'faults',
    faults: { lengthOverallM: expect.stringContaining('metres') },
  });
});

test('every fault is told at once', () => {
  const faults = toNewVessel({ ...emptyVessel, name: '  ', lengthOverallM: 'x' });
  expect(faults.kind === 'faults' && Object.keys(faults.faults)).toEqual(['name', 'lengthOverallM']);
});
