import type { Rule } from '../rule.ts';
import { every, NO_SOURCE, ownFigure, sinceLastOrFitted } from './shapes.ts';

const RETIREMENT = {
  publication: 'safety press',
  clause: 'several',
  address: 'https://www.practical-sailor.com/safety-seamanship/when-is-it-time-to-retire-a-safety-tether',
  status: 'second_hand',
} as const;

export const SAFETY_ON_DECK_RULES: readonly Rule[] = [
  {
    id: 'mob',
    scheme: 'common_practice',
    weight: 'common_practice',
    kinds: ['man_overboard_recovery_gear', 'throwing_line', 'danbuoy'],
    inWords: 'Man-overboard recovery gear, throwing lines and danbuoys are gone over every year.',
    source: NO_SOURCE,
    duties: [
      {
        id: 'inspection',
        action: { kind: 'inspect', words: 'Rig it and go over it: lines, tackle, floats, pole' },
        inWords: 'Man-overboard recovery gear, throwing lines and danbuoys are gone over every year',
        ...sinceLastOrFitted(every('P1Y'), 'inspection'),
        resets: [{ act: 'inspected', by: [] }],
      },
    ],
    checks: [],
  },
  {
    id: 'lblight',
    scheme: 'common_practice',
    weight: 'common_practice',
    kinds: ['lifebuoy_light'],
    inWords: 'The battery of a lifebuoy or danbuoy light is changed by the date on it; the light is tested every year.',
    source: NO_SOURCE,
    duties: [
      {
        id: 'battery',
        action: { kind: 'replace', words: 'Replace the light or its battery' },
        inWords: 'A lifebuoy or danbuoy light is good until the date on its battery',
        limits: [{ kind: 'printed', renewedBy: 'battery' }],
        expires: true,
        resets: [
          { act: 'serviced', tests: ['battery'], by: [] },
          { act: 'replaced', by: [] },
        ],
      },
      {
        id: 'test',
        action: { kind: 'test', words: 'Test the light' },
        inWords: 'A lifebuoy or danbuoy light is tested every year',
        ...sinceLastOrFitted(every('P1Y'), 'test'),
        resets: [{ act: 'tested', tests: ['function', 'self_test'], by: [] }],
      },
    ],
    checks: [],
  },
  {
    id: 'jack-uv',
    scheme: 'common_practice',
    weight: 'common_practice',
    kinds: ['webbing_jackstay'],
    inWords:
      "A webbing jackstay is renewed at the end of the life that its maker gives it, and without that figure two years after it was fitted. One year of full sun, two years of exposure taken together and three years are all quoted, and no standard says: two years are a maker's figure for exposure, counted here as if it had been out all the time.",
    source: RETIREMENT,
    alsoAsks: [
      'It is looked at before each use, and taken out of use at the first sign of sun or worn stitching.',
      'Webbing with a wear indicator is taken out of use when the indicator shows.',
    ],
    duties: [
      {
        id: 'replacement',
        action: { kind: 'replace', words: 'Renew the webbing jackstay' },
        inWords:
          'A webbing jackstay is renewed at the end of the life that its maker gives it, else after 2 years of exposure',
        limits: [
          {
            kind: 'after',
            from: 'installed',
            plus: ownFigure('makerLifeMonths', 'P2Y'),
            reading: 'the webbing is taken to have been out in the weather since it was fitted',
          },
        ],
        resets: [{ act: 'replaced', by: [] }],
      },
    ],
    checks: [],
  },
  {
    id: 'harness',
    scheme: 'common_practice',
    weight: 'common_practice',
    kinds: ['safety_harness'],
    inWords:
      'A safety harness and its tether are gone over every year and looked at before each use; with the overload indicator showing they are taken out of use.',
    source: {
      ...RETIREMENT,
      publication: 'practical test magazine',
      clause: 'retirement article',
    },
    alsoAsks: [
      'It is looked at before each use.',
      'A tether whose overload indicator shows is taken out of use: record the withdrawal.',
    ],
    duties: [
      {
        id: 'inspection',
        action: { kind: 'inspect', words: 'Go over the harness and tether: stitching, hooks, overload indicator' },
        inWords: 'A safety harness and its tether are gone over every year',
        ...sinceLastOrFitted(every('P1Y'), 'inspection'),
        resets: [{ act: 'inspected', by: [] }],
      },
    ],
    checks: [],
  },
];
