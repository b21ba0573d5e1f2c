import { expect, test } from 'vitest';
import { emptyItem, itemFaults, toNewItem } from './item-draft.ts';

test('a thing is sent with what is known of it', () => {
  expect(
    toNewItem({ ...emptyItem, kind: 'hand_flare', label: ' Hand flares ', quantity: '6', zone: 'cockpit' }),
  ).toEqual({
    kind: 'ready',
    body: { kind: 'hand_flare', label: 'Hand flares', quantity: 6, zone: 'cockpit' },
  });
});

test('every box that is wrong is named at once', () => {
  const ready = toNewItem({ ...emptyItem, quantity: '1.5' });
  expect(ready.kind === 'faults' && Object.keys(ready.faults)).toEqual(['label', 'kind', 'quantity']);
});

test('the faults that the API finds come to their boxes, and a refusal without faults is told at the head', () => {
  const problem = { type: '/problems/invalid', title: 'Not as it should be', status: 422 };
  expect(itemFaults({ ...problem, errors: [{ pointer: '/zone', detail: 'is too long' }] })).toEqual({
    faults: { zone: 'is too long' },
    others: [],
  });
  expect(itemFaults(problem).others).toEqual(['Not as it should be']);
});
