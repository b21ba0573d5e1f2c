import type { Rule } from '../rule.ts';
import { every, NO_SOURCE, sinceLastDone, sinceLastOrFitted } from './shapes.ts';

export const ENGINE_HOURS_RULES: readonly Rule[] = [
  {
    id: 'eng-oil',
    scheme: 'common_practice',
    weight: 'common_practice',
    kinds: ['engine'],
    inWords:
      "Engine oil and filter are changed every year, or after the running hours in the maker's book, whichever is first. Between 100 and 200 hours are often heard: a range is no figure, so none is counted until the maker's is given.",
    source: NO_SOURCE,
    duties: [
      {
        id: 'oil_change',
        action: { kind: 'service', words: 'Change the engine oil and its filter' },
        inWords: "Engine oil and filter are changed every year or after the maker's running hours, whichever is first",
        limits: [sinceLastDone(every('P1Y')), { kind: 'running_hours', attribute: 'oilChangeHours' }],
        fallback: sinceLastOrFitted(every('P1Y'), 'oil change').fallback ?? [],
        resets: [{ act: 'serviced', tests: ['oil_and_filter'], by: [] }],
      },
    ],
    checks: [],
  },
  {
    id: 'eng-imp',
    scheme: 'common_practice',
    weight: 'common_practice',
    kinds: ['engine'],
    inWords:
      "The impeller of the raw-water pump is changed every year, or after the running hours in the maker's book, whichever is first. Between 200 and 300 hours are often heard: a range is no figure, so none is counted until the maker's is given.",
    source: NO_SOURCE,
    duties: [
      {
        id: 'impeller_change',
        action: { kind: 'service', words: 'Change the impeller of the raw-water pump' },
        inWords: "The raw-water impeller is changed every year or after the maker's running hours, whichever is first",
        limits: [sinceLastDone(every('P1Y')), { kind: 'running_hours', attribute: 'impellerHours' }],
        fallback: sinceLastOrFitted(every('P1Y'), 'impeller change').fallback ?? [],
        resets: [{ act: 'serviced', tests: ['impeller'], by: [] }],
      },
    ],
    checks: [],
  },
];
