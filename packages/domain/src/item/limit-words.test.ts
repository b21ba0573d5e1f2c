import { expect, it } from 'vitest';
import { findRule } from '../rule/rules.ts';
import { limitInWords } from './limit-words.ts';

const wordsOf = (ruleId: string, dutyId: string) => {
  const duty = findRule(ruleId)?.duties.find(({ id }) => id === dutyId);
  if (!duty) throw new Error(`no duty ${dutyId} of ${ruleId}`);
  return [...duty.limits, ...(duty.cappedBy ?? []), ...(duty.noLaterThan ?? []), ...(duty.fallback ?? [])].map(
    (limit) => limitInWords(limit, duty),
  );
};

it.each([
  ['lpg-hose', 'replacement', ['the date printed on it', '5 years after fitting', '5 years after manufacture']],
  ['raft-solas', 'service', ['12 months after the last service']],
  ['raft-gi', 'gas_inflation_test', ['5 years after the last gas-inflation test', '5 years after manufacture']],
  ['raft-ext30', 'service', ['30 months, shorter with age, after the last service']],
  ['raft-ca', 'service', ['30 months or 2 years or 1 year, by its kind and use, after the last service']],
  [
    'raft-9650',
    'service',
    ["maker's interval after the last service", 'earliest expiry among the things packed in the raft'],
  ],
  ['fe-fixed', 'hoses', ["10 years after day on which the system's hoses were fitted", '10 years after fitting']],
  ['rig-coi', 'inspection', ['the next inspection']],
  ['keelbolt', 'haul_out', ['the next haul-out']],
  ['cert-ukwb', 'certificate', ['the last day of the workboat certificate']],
  [
    'annual-ukwb',
    'annual_survey',
    ['the next anniversary of the workboat certificate', '15 months beginning with the last annual survey'],
  ],
  ['inter-ukwb', 'intermediate_survey', ['36 months beginning with the survey that began the workboat certificate']],
  ['hssc-inter', 'intermediate_survey', ['the last of the anniversaries 2 and 3 of the certificate']],
  ['epirb-ann', 'annual_test', ['next anniversary date of the certificate']],
  ['epirb-bat', 'battery', ['the date printed on it', 'at once after it was used']],
  [
    'rig-osr',
    'structural_inspection',
    ['a race start within 24 months of the last inspection', 'at once after a grounding'],
  ],
  [
    'eng-oil',
    'oil_change',
    [
      '1 year after the last oil and filter change',
      "maker's running hours between oil and filter changes",
      '1 year after fitting',
    ],
  ],
  ['deficient', 'rectification', ['the day that the surveyor set']],
  ['bss-re', 're_examination', ['3 months after the inspection that did not pass']],
])('says the limits of %s, %s', (ruleId, duty, words) => {
  expect(wordsOf(ruleId, duty)).toEqual(words);
});

it('says the period that was counted, where there was a choice', () => {
  const duty = findRule('raft-ca')?.duties[0];
  const [limit] = duty?.limits ?? [];
  expect(duty && limit && limitInWords(limit, duty, 'P2Y')).toBe('2 years after the last service');
});
