import { expect, test } from 'vitest';
import { draftOfItem, emptyItem, itemFaults, namedFaults, toItemChange, toNewItem } from './item-draft.ts';

test('a thing is sent with what is known of it', () => {
  expect(
    toNewItem({ ...emptyItem, kind: 'hand_flare', label: ' Hand flares ', quantity: '6', zone: 'cockpit' }, []),
  ).toEqual({
    kind: 'ready',
    body: { kind: 'hand_flare', label: 'Hand flares', quantity: 6, zone: 'cockpit' },
  });
});

test('every box that is wrong is named at once', () => {
  const ready = toNewItem({ ...emptyItem, quantity: '1.5' }, []);
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

const KNOWN: Parameters<typeof toNewItem>[1] = [
  { name: 'seasonMonths', type: 'number', is: 'months', words: 'months a year', whereFound: 'the schedule' },
  { name: 'dryStoredOffSeason', type: 'boolean', is: 'yes_no', words: 'stored dry', whereFound: 'the yard' },
  { name: 'contentsExpireOn', type: 'string', is: 'date', words: 'contents run out', whereFound: 'the lid' },
];
const RAFT: Parameters<typeof toItemChange>[2] = {
  ...{ id: 'i', vesselId: 'v', kind: 'liferaft', label: 'Raft', quantity: 1, maker: 'Skerry', withdrawn: false },
  ...{ createdAt: '2026-01-01T00:00:00Z', version: 3 },
  attributes: { seasonMonths: 6, dryStoredOffSeason: false, standard: 'solas' },
};

test('what its rules ask besides dates is read as what it is, and left out where it is left open', () => {
  const typed = { seasonMonths: ' 7 ', dryStoredOffSeason: 'yes', contentsExpireOn: 'Mar 2027' };
  const ready = toNewItem({ ...emptyItem, kind: 'liferaft', label: 'Raft', attributes: typed }, KNOWN);
  expect(ready.kind === 'ready' && ready.body.attributes).toEqual({
    seasonMonths: 7,
    dryStoredOffSeason: true,
    contentsExpireOn: '2027-03',
  });
  const open = toNewItem({ ...emptyItem, kind: 'liferaft', label: 'Raft', attributes: { seasonMonths: '' } }, KNOWN);
  expect(open).toEqual({ kind: 'ready', body: { kind: 'liferaft', label: 'Raft', quantity: 1 } });
});

test('a value that cannot be read is a fault at its own box, named in its own words', () => {
  const typed = { seasonMonths: 'half', contentsExpireOn: '3/4/2027' };
  const ready = toNewItem({ ...emptyItem, kind: 'liferaft', label: 'Raft', attributes: typed }, KNOWN);
  expect(ready.kind === 'faults' && namedFaults(ready.faults, KNOWN).map(({ id, name }) => [id, name])).toEqual([
    ['item-attributes-seasonMonths', 'Months a year'],
    ['item-attributes-contentsExpireOn', 'Contents run out'],
  ]);
});

test('a change starts from what is recorded, takes away what was emptied, and keeps what the form does not show', () => {
  const draft = draftOfItem(RAFT, KNOWN);
  expect(draft).toMatchObject({ maker: 'Skerry', attributes: { seasonMonths: '6', dryStoredOffSeason: 'no' } });

  const emptied = { ...draft, maker: ' ', attributes: { ...draft.attributes, seasonMonths: '' } };
  expect(toItemChange(emptied, KNOWN, RAFT)).toEqual({
    kind: 'ready',
    body: {
      ...{ label: 'Raft', quantity: 1, zone: null, maker: null, model: null, serialNumber: null },
      attributes: { dryStoredOffSeason: false, standard: 'solas' },
    },
  });
});

test('a fault that the API finds in an attribute comes to its box', () => {
  const problem = { type: '/problems/invalid', title: 'Not as it should be', status: 422 };
  const errors = [{ pointer: '/attributes/seasonMonths', detail: 'must be a whole number' }];
  expect(itemFaults({ ...problem, errors })).toEqual({
    faults: { attributes: { seasonMonths: 'must be a whole number' } },
    others: [],
  });
});
