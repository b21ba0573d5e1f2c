import type { Rule } from '../rule.ts';
import { every, NO_SOURCE, sinceLastOrFitted } from './shapes.ts';

export const SEACOCK_RULES: readonly Rule[] = [
  {
    id: 'sea-dzr',
    scheme: 'common_practice',
    weight: 'common_practice',
    kinds: ['seacock'],
    appliesWhen: [
      {
        condition: { kind: 'attribute_is', attribute: 'fittingMaterial', value: 'plain_brass' },
        ifNotRecorded: 'applies',
      },
    ],
    inWords:
      'A seacock, skin fitting or hose tail of plain brass is inspected at each haul-out from five years after it was fitted, and is better renewed in dezincification-resistant brass, bronze or composite. The earlier standard asked that such fittings serve for five years; that is no day on which they must be changed. The standard of 2020 asks for dezincification-resistant brass.',
    source: {
      publication: 'surveyor association article on ISO 9093-1; ISO 9093:2020',
      clause: 'ISO 9093-1 (5 y); ISO 9093:2020 cl. 4.1',
      address: 'http://ukyachtsurveyors.com/article/seacocks-are-they-safe',
      status: 'second_hand',
    },
    alsoAsks: ['Renewing plain brass in a better metal is advised, and has no date.'],
    duties: [
      {
        id: 'inspection',
        action: {
          kind: 'inspect',
          words: 'Have the plain-brass fitting inspected with the boat out of the water, and consider renewing it',
        },
        inWords: 'A plain-brass fitting is inspected 5 years after it was fitted, and at each haul-out after that',
        limits: [{ kind: 'next_event', event: 'haul_out' }],
        begins: { from: 'installed', plus: every('P5Y') },
        resets: [{ act: 'inspected', by: ['surveyor', 'yard'] }],
      },
    ],
    checks: [],
  },
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
