import type { Rule } from '../rule.ts';
import { every, NO_SOURCE, sinceLastDone, sinceLastOrFitted } from './shapes.ts';

export const FIRST_AID_RULES: readonly Rule[] = [
  {
    id: 'firstaid',
    scheme: 'common_practice',
    weight: 'common_practice',
    kinds: ['first_aid_kit'],
    inWords:
      'A first-aid kit is gone through every year, and by the earliest date on anything in it, whichever is first.',
    source: NO_SOURCE,
    alsoAsks: ['What is packed in a liferaft goes by the rule for the contents of the raft.'],
    duties: [
      {
        id: 'check',
        action: { kind: 'inspect', words: 'Go through the first-aid kit and replace what is used or out of date' },
        inWords: 'A first-aid kit is gone through every year, and by the earliest date on anything in it',
        limits: [sinceLastDone(every('P1Y')), { kind: 'given', attribute: 'contentsExpireOn' }],
        fallback: sinceLastOrFitted(every('P1Y'), 'check').fallback,
        resets: [
          { act: 'inspected', by: [] },
          { act: 'serviced', by: [] },
        ],
      },
    ],
    checks: [],
  },
];
