import { expect, it } from 'vitest';
import { ruleReads } from './rule-reads.ts';
import { findRule, RULES } from './rules.ts';

const readsOf = (id: string) => {
  const rule = findRule(id);
  if (!rule) throw new Error(`no rule ${id}`);
  return ruleReads(rule);
};

it.each([
  [
    'lpg-hose',
    { facts: ['installed', 'manufactured', 'printed_expiry', 'replaced'], attributes: ['hoseLifeCountsFrom'] },
  ],
  ['raft-solas', { facts: ['extended', 'serviced'], attributes: ['extendedInterval'] }],
  ['raft-nap', { facts: ['manufactured', 'serviced', 'tested'], tests: ['necessary_additional_pressure'] }],
  ['raft-pack', { facts: ['printed_expiry', 'replaced'], events: ['liferaft_service'] }],
  ['raft-9650', { facts: ['serviced'], attributes: ['makerIntervalMonths', 'packedContentsExpireOn', 'standard'] }],
  ['rig-coi', { facts: ['inspected'], events: ['inspection'] }],
  [
    'ins-survey',
    {
      facts: ['inspected', 'manufactured'],
      tests: ['out_of_water'],
      attributes: ['insurerFirstSurveyMonths', 'insurerIntervalMonths'],
    },
  ],
  ['pyro-us-mfr', { facts: ['manufactured', 'printed_expiry'] }],
  [
    'annual-ukwb',
    {
      facts: ['inspected', 'printed_expiry'],
      tests: ['annual_survey', 'initial_survey', 'intermediate_survey', 'renewal_survey'],
    },
  ],
  [
    'hssc-renew',
    {
      facts: ['inspected', 'printed_expiry'],
      tests: ['initial_survey', 'renewal_survey'],
      attributes: ['expiryLessOneDay'],
    },
  ],
  ['epirb-bat', { facts: ['activated', 'printed_expiry', 'serviced'], tests: ['battery'] }],
  ['epirb-min', { facts: ['installed', 'printed_expiry', 'replaced', 'serviced'], tests: ['battery'] }],
  ['rig-osr', { facts: ['inspected'], events: ['grounding', 'race_start'] }],
  [
    'eng-oil',
    {
      facts: ['installed', 'meter', 'replaced', 'serviced'],
      tests: ['oil_and_filter'],
      attributes: ['oilChangeHours'],
    },
  ],
  ['epirb-ann', { facts: ['tested'], tests: ['annual_test'], attributes: ['anniversaryDate', 'passengerShip'] }],
  ['us-laidup', { facts: [], situations: ['dismantled', 'use'] }],
  [
    'raft-ca',
    {
      facts: ['manufactured', 'serviced'],
      attributes: [
        'conventionShip',
        'cylinderTestValidTo',
        'dryStoredOffSeason',
        'extendedInterval',
        'operatesOnlyMonthsMeanDailyMinAbove0C',
        'seasonMonths',
      ],
    },
  ],
])('%s reads what its shape says, each once', (id, reads) => {
  expect(readsOf(id)).toEqual({ tests: [], attributes: [], events: [], situations: [], ...reads });
});

it('no rule reads nothing', () => {
  expect(
    RULES.filter((rule) => rule.duties.length > 0 && ruleReads(rule).facts.length === 0).map(({ id }) => id),
  ).toEqual([]);
});
