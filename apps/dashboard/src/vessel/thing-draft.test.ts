import { describe, expect, test } from 'vitest';
import { entryFaults, NO_FAULTS, toldFaults } from './entry-faults.ts';
import { thingsOf, toNewItems } from './thing-draft.ts';

const LAUNCH = {
  id: 'launch',
  name: 'Launch',
  forWhom: 'An open launch.',
  items: [
    { kind: 'engine', label: 'Engine', zone: 'engine space', quantity: 1 },
    { kind: 'hand_flare', label: 'Hand flares', zone: 'cockpit', quantity: 4 },
    { kind: 'hull', label: 'Hull', zone: 'hull', quantity: 1 },
  ],
};
const [hull, flares, engine] = thingsOf(LAUNCH);
if (!hull || !flares || !engine) throw new Error('the launch has three things');
const unticked = { ...flares, aboard: false, label: '' };

describe('the things of a template', () => {
  test('stand in survey order, all ticked', () => {
    expect(thingsOf(LAUNCH).map(({ label, aboard }) => [label, aboard])).toEqual([
      ['Hull', true],
      ['Hand flares', true],
      ['Engine', true],
    ]);
  });

  test('are sent as they were confirmed, without those unticked', () => {
    expect(toNewItems([hull, unticked, { ...engine, label: ' Outboard ', zone: ' ', quantity: '2' }])).toEqual({
      kind: 'ready',
      items: [
        { kind: 'hull', label: 'Hull', zone: 'hull', quantity: 1 },
        { kind: 'engine', label: 'Outboard', quantity: 2 },
      ],
      rows: [0, 2],
    });
  });

  test('show every fault of every ticked row at once, and none of the others', () => {
    const ready = toNewItems([{ ...hull, label: ' ' }, unticked, { ...engine, label: '', quantity: '1.5' }]);
    expect(
      ready.kind === 'faults' && Object.entries(ready.faults).map(([row, all]) => [row, Object.keys(all)]),
    ).toEqual([
      ['0', ['label']],
      ['2', ['label', 'quantity']],
    ]);
  });
});

describe('what the API finds wrong', () => {
  const problem = (errors: { pointer: string; detail: string }[]) => ({
    type: '',
    title: 'Not right',
    status: 422,
    errors,
  });

  test('comes to the box of the row it was sent from', () => {
    const faults = entryFaults(problem([{ pointer: '/items/1/label', detail: 'is too long' }]), [0, 2]);
    expect(faults).toEqual({ vessel: {}, things: { 2: { label: 'is too long' } }, others: [] });
    expect(toldFaults(faults, [hull, flares, engine], String)).toEqual([
      { id: 'thing-2-label', name: 'Engine: called', fault: 'is too long' },
    ]);
  });

  test('is told by the kind of thing where the thing has no name', () => {
    const faults = { ...NO_FAULTS, things: { 0: { label: 'needs a name' } } };
    const told = toldFaults(faults, [{ ...hull, label: '' }], (kind) => `some ${kind}`);
    expect(told.map(({ name }) => name)).toEqual(['some hull: called']);
  });

  test('comes to her own boxes; what has no box is told at the head', () => {
    const errors = [
      { pointer: '/name', detail: 'is too long' },
      { pointer: '/items/0/kind', detail: 'is no kind' },
    ];
    expect(entryFaults(problem(errors), [0])).toEqual({
      vessel: { name: 'is too long' },
      things: {},
      others: ['items/0/kind: is no kind'],
    });
  });

  test('is never nothing', () => {
    expect(entryFaults(problem([]), []).others).toEqual(['Not right']);
  });
});
