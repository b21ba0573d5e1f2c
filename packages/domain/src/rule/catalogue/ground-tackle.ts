import type { Rule } from '../rule.ts';
import { every, NO_SOURCE, sinceLastOrFitted } from './shapes.ts';

export const GROUND_TACKLE_RULES: readonly Rule[] = [
  {
    id: 'chain',
    scheme: 'common_practice',
    weight: 'common_practice',
    kinds: ['anchor_chain'],
    inWords:
      'The links of an anchor chain are measured for wear every year, its shackles and connectors included. From memory: it is taken out of use at a tenth less than its diameter when new.',
    source: { ...NO_SOURCE, fromMemory: 'the tenth of its diameter' },
    alsoAsks: ['A chain that has lost a tenth of its diameter is taken out of use: record the withdrawal.'],
    duties: [
      {
        id: 'measurement',
        action: { kind: 'inspect', words: 'Measure the most worn links, and look at shackles and connectors' },
        inWords: 'The wear of an anchor chain is measured every year',
        ...sinceLastOrFitted(every('P1Y'), 'measurement'),
        resets: [{ act: 'inspected', by: [] }],
      },
    ],
    checks: [],
  },
];
