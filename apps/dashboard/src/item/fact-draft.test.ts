import { expect, test } from 'vitest';
import { emptyDraft, toNewFact } from './fact-draft.ts';
import { faultsByBox } from './fact-faults.ts';

const service = { ...emptyDraft, item: 'i', fact: 'serviced', on: '25 Nov 2026' };

test('what is sent is what was typed, and empty boxes are not sent', () => {
  expect(toNewFact({ ...service, name: ' Skerry Rafts ', capacity: 'liferaft_service_station' }, undefined)).toEqual({
    kind: 'ready',
    body: {
      fact: 'serviced',
      on: '2026-11-25',
      outcome: 'passed',
      evidence: 'unknown',
      doneBy: { name: 'Skerry Rafts', capacity: 'liferaft_service_station' },
    },
  });
});

test('a box that the kind of fact does not have is not sent, though something was typed in it', () => {
  const ready = toNewFact(
    { ...service, fact: 'printed_expiry', on: 'Nov 2028', name: 'Somebody', until: '1 Jan 2027' },
    'f',
  );
  expect(ready).toEqual({
    kind: 'ready',
    body: { fact: 'printed_expiry', on: '2028-11', evidence: 'unknown', corrects: 'f' },
  });
});

test('every box that keeps it from being sent is named at once', () => {
  const ready = toNewFact({ ...emptyDraft, fact: 'extended', on: '3/4/2026', until: '2027' }, undefined);
  expect(ready.kind === 'faults' && Object.keys(ready.faults)).toEqual(['item', 'on', 'until']);
});

test('a meter needs a number, and nothing is not nought', () => {
  const meter = { ...service, fact: 'meter', readingValue: '' };
  expect(toNewFact(meter, undefined).kind).toBe('faults');
  expect(toNewFact({ ...meter, readingValue: '1204,5' }, undefined)).toMatchObject({
    body: { reading: { value: 1204.5, unit: 'hours' } },
  });
});

test('each fault goes to its box; a fault of a box that is not shown is told at the head', () => {
  const problem = {
    type: '/problems/invalid',
    title: 'Not as it should be',
    status: 422,
    errors: [
      { pointer: '/on', detail: 'is in the future' },
      { pointer: '/doneBy/capacity', detail: 'is not known' },
      { pointer: '/until', detail: 'is only for an extension' },
    ],
  };
  expect(faultsByBox(problem, (box) => box !== 'until')).toEqual({
    faults: { on: 'is in the future', capacity: 'is not known' },
    others: ['until: is only for an extension'],
  });
});

test('a problem without faults still says something', () => {
  const problem = { type: '/problems/conflict', title: 'Already struck out', status: 409 };
  expect(faultsByBox(problem, () => true)).toEqual({ faults: {}, others: ['Already struck out'] });
});
