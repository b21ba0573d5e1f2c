import { expect, test } from 'vitest';
import { type Rule, workedExample } from './worked-example.ts';

const RULE: Rule = {
  id: 'raft-solas',
  scheme: 'solas',
  weight: 'law',
  kinds: ['liferaft', 'rescue_boat'],
  inWords: 'An inflatable liferaft is serviced every 12 months.',
  source: { publication: 'SOLAS', clause: 'III/20.8.1', address: null, status: 'read' },
  duties: [
    {
      id: 'service',
      action: { kind: 'service', words: 'Have it serviced' },
      inWords: 'It is serviced',
      details: [],
      resets: [{ act: 'serviced', by: ['liferaft_service_station'] }],
    },
  ],
  checks: [],
  own: false,
  alsoAsks: [],
  appliesWhen: [],
  whileNotRecorded: [],
  reads: { facts: ['serviced'], tests: [], attributes: [], events: [], situations: [], meanings: [] },
};
const reading = (reads: Partial<Rule['reads']>, more: Partial<Rule> = {}) =>
  workedExample({ ...RULE, ...more, reads: { ...RULE.reads, ...reads } }, '2026-11-25');

test('an example is of the first kind, under the rule’s own scheme, with the act that starts its clock', () => {
  expect(reading({})).toEqual({
    kind: 'liferaft',
    schemes: ['solas'],
    facts: [
      { fact: 'serviced', on: '2026-04-25', doneBy: { capacity: 'liferaft_service_station' }, evidence: 'record' },
    ],
    asOf: '2026-11-25',
  });
});

test('it states the dates that the rule counts from, and then nothing was replaced since', () => {
  const replaced = { ...RULE.duties[0], resets: [{ act: 'replaced', by: [] }] } as Rule['duties'][number];

  expect(
    reading({ facts: ['installed', 'manufactured', 'printed_expiry', 'replaced'] }, { duties: [replaced] })?.facts,
  ).toEqual([
    { fact: 'manufactured', on: '2023-07', evidence: 'stamped' },
    { fact: 'installed', on: '2023-11-25', evidence: 'record' },
    { fact: 'printed_expiry', on: '2028-01', evidence: 'printed' },
  ]);
  expect(reading({ facts: ['replaced'] }, { duties: [replaced] })?.facts).toHaveLength(1);
});

test('it plans the events that can be planned, and gives the figures that a maker would', () => {
  const months = (name: string) => ({ name, type: 'number', is: 'months', words: '', whereFound: '' }) as const;

  const example = reading({
    events: ['inspection', 'grounding'],
    attributes: [months('makerIntervalMonths'), months('makerLifeMonths'), months('seasonMonths')],
  });

  expect(example?.events).toEqual([{ event: 'inspection', on: '2027-04-25', planned: true }]);
  expect(example?.attributes).toEqual({ makerIntervalMonths: 24, makerLifeMonths: 120 });
});

test('two duties that one act resets state it once, and a duty for other kinds does not count', () => {
  const [service] = RULE.duties as [Rule['duties'][number]];

  expect(reading({}, { duties: [service, { ...service, id: 'again' }] })?.facts).toHaveLength(1);
  expect(reading({}, { duties: [{ ...service, onlyFor: ['rescue_boat'] }] })?.facts).toEqual([]);
});

test('there is none for a rule without duties, without things, or by a meter', () => {
  expect(reading({}, { duties: [] })).toBeNull();
  expect(reading({}, { kinds: [] })).toBeNull();
  expect(reading({ facts: ['meter', 'serviced'] })).toBeNull();
});
