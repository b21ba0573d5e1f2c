import type { Rule } from '../rule.ts';
import { every, NO_SOURCE, sinceLastOrFitted } from './shapes.ts';

const SWING = sinceLastOrFitted(every('P2Y'), 'swing');

export const NAVIGATION_RULES: readonly Rule[] = [
  {
    id: 'compass',
    scheme: 'common_practice',
    weight: 'common_practice',
    kinds: ['steering_compass'],
    inWords:
      "A compass is swung and its deviation card renewed every two years, and after any change of the boat's structure, electrics or iron.",
    source: NO_SOURCE,
    duties: [
      {
        id: 'swing',
        action: { kind: 'test', words: 'Have a compass adjuster swing the compass and make a deviation card' },
        inWords: "A compass is swung every 2 years, and after a change of the boat's structure, electrics or iron",
        limits: [...SWING.limits, { kind: 'triggered', events: ['alteration', 'structural_repair'], facts: [] }],
        fallback: SWING.fallback ?? [],
        resets: [{ act: 'tested', tests: ['compass_swing'], by: ['compass_adjuster'] }],
      },
    ],
    checks: [],
  },
];
