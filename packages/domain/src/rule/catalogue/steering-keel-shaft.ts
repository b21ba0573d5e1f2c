import type { Capacity } from '../../item/fact.ts';
import type { Rule } from '../rule.ts';
import { every, NO_SOURCE, ownFigure, sinceFitted, sinceLastDone, sinceLastOrFitted } from './shapes.ts';

const SURVEY: readonly Capacity[] = ['surveyor', 'yard'];
const ENGINEER: readonly Capacity[] = ['marine_engineer', 'yard'];

export const STEERING_KEEL_SHAFT_RULES: readonly Rule[] = [
  {
    id: 'steer',
    scheme: 'common_practice',
    weight: 'common_practice',
    kinds: ['steering_gear', 'steering_cable'],
    inWords:
      "Steering cables, quadrant and hydraulics are inspected every year. A cable is renewed at the end of its maker's life; five to ten years are often heard, and not counted.",
    source: NO_SOURCE,
    duties: [
      {
        id: 'inspection',
        action: { kind: 'inspect', words: 'Have the steering inspected from wheel to rudder stock' },
        inWords: 'The steering is inspected every year',
        ...sinceLastOrFitted(every('P1Y'), 'inspection'),
        resets: [{ act: 'inspected', by: ['rigger', 'marine_engineer', 'yard', 'surveyor'] }],
      },
      {
        id: 'replacement',
        action: { kind: 'replace', words: 'Have the steering cable renewed' },
        inWords: 'A steering cable is renewed at the end of the life that its maker gives it',
        onlyFor: ['steering_cable'],
        limits: [sinceFitted(ownFigure('makerLifeMonths'))],
        resets: [{ act: 'replaced', by: ['rigger', 'marine_engineer', 'yard'] }],
      },
    ],
    checks: [],
  },
  {
    id: 'keelbolt',
    scheme: 'common_practice',
    weight: 'common_practice',
    kinds: ['keel_bolts'],
    inWords:
      'Keel bolts and their floors are looked at at each haul-out, and a sample bolt is drawn about every ten years, or at the interval set for the boat. A boat that races offshore has its own rule besides.',
    source: NO_SOURCE,
    duties: [
      {
        id: 'haul_out',
        action: {
          kind: 'inspect',
          words: 'Have the keel joint, bolts and floors looked at with the boat out of the water',
        },
        inWords: 'Keel bolts are looked at at each haul-out',
        limits: [{ kind: 'next_event', event: 'haul_out' }],
        resets: [{ act: 'inspected', by: SURVEY }],
      },
      {
        id: 'sample_bolt',
        action: { kind: 'test', words: 'Have a sample keel bolt drawn, by a yard that holds the keel up' },
        inWords: 'A sample keel bolt is drawn at the interval set for the boat, else about every 10 years',
        ...sinceLastOrFitted(ownFigure('makerIntervalMonths', 'P10Y'), 'drawing of a bolt'),
        resets: [{ act: 'tested', tests: ['bolt_drawn'], by: SURVEY }],
      },
    ],
    checks: [],
  },
  {
    id: 'rudbrg',
    scheme: 'common_practice',
    weight: 'common_practice',
    kinds: ['rudder_bearings'],
    inWords:
      'The play of the rudder in its bearings is checked every year, at the next haul-out where one comes before.',
    source: NO_SOURCE,
    duties: [
      {
        id: 'play',
        action: { kind: 'inspect', words: "Have the rudder's play and stock checked with the boat out of the water" },
        inWords: 'The play of the rudder is checked every year, or at the next haul-out, whichever is first',
        limits: [sinceLastDone(every('P1Y')), { kind: 'next_event', event: 'haul_out' }],
        fallback: sinceLastOrFitted(every('P1Y'), 'check').fallback,
        resets: [{ act: 'inspected', by: SURVEY }],
      },
    ],
    checks: [],
  },
  {
    id: 'shaft',
    scheme: 'common_practice',
    weight: 'common_practice',
    kinds: ['propeller_shaft', 'shaft_seal'],
    inWords:
      'A stern gland is checked, repacked or adjusted every year; the shaft and its bearing are inspected at each haul-out. The bellows of a lip or face seal is renewed at the end of the life that its maker gives it, else after about six years.',
    source: NO_SOURCE,
    alsoAsks: ['Running hours are not worked out here.'],
    duties: [
      {
        id: 'gland',
        action: { kind: 'service', words: 'Have the stern gland or seal checked, and repacked or adjusted' },
        inWords: 'A stern gland or shaft seal is checked and adjusted every year',
        ...sinceLastOrFitted(every('P1Y'), 'service'),
        resets: [{ act: 'serviced', by: ENGINEER }],
      },
      {
        id: 'haul_out',
        action: {
          kind: 'inspect',
          words: 'Have the shaft and cutless bearing inspected with the boat out of the water',
        },
        inWords: 'The shaft and its bearing are inspected at each haul-out',
        onlyFor: ['propeller_shaft'],
        limits: [{ kind: 'next_event', event: 'haul_out' }],
        resets: [{ act: 'inspected', by: [...ENGINEER, 'surveyor'] }],
      },
      {
        id: 'bellows',
        action: { kind: 'replace', words: 'Have the seal and its bellows renewed' },
        inWords:
          'The bellows of a shaft seal is renewed at the end of the life that its maker gives it, else after about 6 years',
        onlyFor: ['shaft_seal'],
        limits: [sinceFitted(ownFigure('makerLifeMonths', 'P6Y'))],
        resets: [{ act: 'replaced', by: ENGINEER }],
      },
    ],
    checks: [],
  },
];
