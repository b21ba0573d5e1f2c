import type { Rule } from '../rule.ts';
import { every, NO_SOURCE, ownFigure, sinceFitted, sinceLastDone, sinceLastOrFitted } from './shapes.ts';

export const ELECTRIC_RULES: readonly Rule[] = [
  {
    id: 'batt',
    scheme: 'common_practice',
    weight: 'common_practice',
    kinds: ['battery'],
    inWords:
      'A battery is load-tested every year and replaced at the end of the life that its maker gives it. Three to seven years are often heard: they are not counted.',
    source: NO_SOURCE,
    alsoAsks: ['A battery that fails its load test is replaced whatever its age.'],
    duties: [
      {
        id: 'load_test',
        action: { kind: 'test', words: 'Have the battery load-tested' },
        inWords: 'A battery is load-tested every year',
        ...sinceLastOrFitted(every('P1Y'), 'load test'),
        resets: [{ act: 'tested', tests: ['load_test'], by: ['electrician', 'marine_engineer'] }],
      },
      {
        id: 'replacement',
        action: { kind: 'replace', words: 'Have the battery replaced' },
        inWords: 'A battery is replaced at the end of the life that its maker gives it',
        limits: [sinceFitted(ownFigure('makerLifeMonths'))],
        resets: [{ act: 'replaced', by: ['electrician', 'marine_engineer'] }],
      },
    ],
    checks: [],
  },
  {
    id: 'bilge',
    scheme: 'common_practice',
    weight: 'common_practice',
    kinds: ['bilge_pump', 'bilge_alarm', 'navigation_lights'],
    inWords:
      'Bilge pumps, bilge alarms and navigation lights are tried every month in use, and tested in full every year.',
    source: NO_SOURCE,
    duties: [
      {
        id: 'function_test',
        action: { kind: 'test', words: 'Try it: pump, alarm or lights' },
        inWords: 'Bilge pumps, bilge alarms and navigation lights in use are tried every month',
        limits: [sinceLastDone(every('P1M'))],
        resets: [{ act: 'tested', tests: ['function', 'full_function'], by: [] }],
      },
      {
        id: 'full_test',
        action: { kind: 'test', words: 'Test it in full: strainer, switch, float, wiring, discharge or sectors' },
        inWords: 'Bilge pumps, bilge alarms and navigation lights are tested in full every year',
        ...sinceLastOrFitted(every('P1Y'), 'full test'),
        resets: [{ act: 'tested', tests: ['full_function'], by: [] }],
      },
    ],
    checks: [],
  },
];
