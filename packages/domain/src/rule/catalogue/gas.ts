import type { Rule } from '../rule.ts';
import { every, ownFigure, sinceFitted, sinceLastDone } from './shapes.ts';

export const GAS_RULES: readonly Rule[] = [
  {
    id: 'gas-det',
    scheme: 'common_practice',
    weight: 'common_practice',
    kinds: ['gas_detector', 'carbon_monoxide_alarm'],
    inWords:
      'A gas detector or carbon monoxide alarm is not used past the replace-by date marked on it. Where none is marked, it is replaced at the end of the life that its maker gives it, and without that figure five years after it was fitted: makers give five to ten. It is tested every week in use.',
    source: {
      publication: 'Boat Safety Scheme advice; US yard notice',
      clause: 'living with CO alarms',
      address: 'https://www.boatsafetyscheme.org/stay-safe-advice/carbon-monoxide-co/living-with-alarms/',
      status: 'second_hand',
    },
    alsoAsks: ['It is tested on going aboard, whenever the last test was.'],
    duties: [
      {
        id: 'replacement',
        action: { kind: 'replace', words: 'Replace the detector or alarm' },
        inWords:
          'A gas detector or carbon monoxide alarm is good until the date marked on it, or without one for the life that its maker gives it, else 5 years from fitting',
        limits: [{ kind: 'printed' }],
        fallback: [sinceFitted(ownFigure('makerLifeMonths', 'P5Y'))],
        expires: true,
        resets: [{ act: 'replaced', by: [] }],
      },
      {
        id: 'test',
        action: { kind: 'test', words: 'Press the test button of the detector or alarm' },
        inWords: 'A gas detector or carbon monoxide alarm in use is tested every week',
        limits: [sinceLastDone(every('P1W'))],
        resets: [{ act: 'tested', tests: ['self_test', 'function'], by: [] }],
      },
    ],
    checks: [],
  },
  {
    id: 'lpg-drain',
    scheme: 'uk_inland',
    weight: 'certificate',
    kinds: ['gas_locker_drain'],
    inWords:
      'The drain of a gas locker leads overboard, clear and at least 19 mm in bore. Its hose has a limited life and is checked regularly; no interval is given. It is looked at in the next examination.',
    source: {
      publication: 'Boat Safety Scheme non-private standards',
      clause: '7.5',
      address:
        'https://www.boatsafetyscheme.org/boat-examination-and-certification/non-private-boats/part-7-lpg-installations/cylinder-lockerhousing-drains/',
      status: 'read',
    },
    alsoAsks: [
      'The bore of the drain is at least 19 mm.',
      'Water is poured through at each fit-out: common practice, no source, and no date is worked out for it.',
    ],
    duties: [
      {
        id: 'drain_test',
        action: { kind: 'test', words: 'Have the gas locker drain and its hose checked, with water poured through' },
        inWords: 'The drain of a gas locker is in order by the next examination',
        limits: [{ kind: 'next_event', event: 'inspection' }],
        resets: [{ act: 'tested', tests: ['drain'], by: [] }],
      },
    ],
    checks: [],
  },
];
