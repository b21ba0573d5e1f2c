import { expect, test } from 'vitest';
import { asItIsNow, changeFaults, draftOfVessel, toVesselChange } from './vessel-change.ts';

const VESSEL: Parameters<typeof draftOfVessel>[0] = {
  ...{ id: 'v', name: 'Turnstone', schemes: ['solas'], timeZone: 'UTC', version: 2, createdAt: '2026-01-01T00:00:00Z' },
  ...{ rig: 'sloop', beamM: 3.1, identifiers: { hin: 'GB-QZX00042C898', callSign: 'MABC2' } },
};
const draft = draftOfVessel(VESSEL);
const body = (change: Partial<typeof draft>) => {
  const ready = toVesselChange({ ...draft, ...change }, VESSEL);
  return ready.kind === 'ready' ? ready.body : ready.faults;
};

test('only what was changed is sent', () => {
  expect(body({})).toEqual({});
  expect(body({ homePort: ' Wrackholm ', lengthOverallM: '9,6', builtYear: '2001' })).toEqual({
    ...{ homePort: 'Wrackholm', lengthOverallM: 9.6, builtYear: 2001 },
  });
});

test('what was emptied is taken away; identifiers and schemes go whole', () => {
  expect(body({ rig: '', beamM: '' })).toEqual({ rig: null, beamM: null });
  expect(body({ hin: '' })).toEqual({ identifiers: { callSign: 'MABC2' } });
  expect(body({ schemes: [] })).toEqual({ schemes: [] });
  expect(body({ schemes: ['solas'] })).toEqual({});
});

test('every box that cannot be read is named at once', () => {
  expect(Object.keys(body({ name: ' ', builtYear: 'about 1990', draughtM: 'deep' }))).toEqual([
    ...['name', 'builtYear', 'draughtM'],
  ]);
});

test('where somebody was quicker, what stands there now is shown for each box that differs', () => {
  expect(asItIsNow({ ...draft, rig: 'ketch' }, VESSEL)).toEqual([{ name: 'Rig', now: 'sloop' }]);
});

test('the faults that the API finds come to their boxes, those of identifiers too', () => {
  const problem = { type: '/problems/invalid', title: 'Not as it should be', status: 422 };
  const errors = [
    { pointer: '/identifiers/hin', detail: 'is too long' },
    { pointer: '/value/amount', detail: 'is no amount' },
  ];
  expect(changeFaults({ ...problem, errors })).toEqual({ faults: { hin: 'is too long' }, others: ['is no amount'] });
});
