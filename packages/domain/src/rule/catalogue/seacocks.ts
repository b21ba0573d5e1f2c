import type { Rule } from '../rule.ts';
import { every, NO_SOURCE, sinceLastOrFitted } from './shapes.ts';

export const SEACOCK_RULES: readonly Rule[] = [
  {
    id: 'sea-insp',
    scheme: 'common_practice',
    weight: 'common_practice',
    kinds: ['seacock'],
    inWords:
      'A seacock is worked every year, and tapped and scraped with its skin fitting, hose tail and clips at each haul-out.',
    source: NO_SOURCE,
    duties: [
      {
        id: 'operation',
        action: { kind: 'test', words: 'Work the seacock: shut and open, and grease it' },
        inWords: 'A seacock is worked every year',
        ...sinceLastOrFitted(every('P1Y'), 'working of it'),
        resets: [{ act: 'tested', tests: ['function'], by: [] }],
      },
      {
        id: 'haul_out',
        action: {
          kind: 'inspect',
          words: 'Have the seacock and its fittings tapped and scraped with the boat out of the water',
        },
        inWords: 'A seacock is tapped and scraped at each haul-out',
        limits: [{ kind: 'next_event', event: 'haul_out' }],
        resets: [{ act: 'inspected', by: ['surveyor', 'yard'] }],
      },
    ],
    checks: [],
  },
];
