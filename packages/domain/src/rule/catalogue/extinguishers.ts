import type { Duty, Rule } from '../rule.ts';
import {
  COMPETENT,
  DISPOSABLE,
  hydrostaticBy,
  PORTABLE,
  REFILLABLE,
  sinceMade,
  TECHNICIAN,
} from './extinguisher-shapes.ts';
import { every, NO_SOURCE, sinceLastDone } from './shapes.ts';

const LOOK: Pick<Duty, 'id' | 'resets'> = {
  id: 'visual',
  resets: [
    { act: 'inspected', by: [] },
    { act: 'serviced', by: [] },
  ],
};

export const EXTINGUISHER_RULES: readonly Rule[] = [
  {
    id: 'fe-us-disp',
    scheme: 'us_recreational',
    weight: 'law',
    kinds: DISPOSABLE,
    inWords:
      'A disposable dry-chemical extinguisher is taken out of use at the end of the twelfth year after its year of manufacture. It must also be in good and serviceable condition.',
    source: {
      publication: 'ACN 002/22 on 33 CFR 175 subpart E',
      clause: 'para 3.a',
      address: 'https://content.govdelivery.com/accounts/USDHSCG/bulletins/305ad80',
      status: 'read',
    },
    alsoAsks: ['It must also be in good and serviceable condition.'],
    duties: [
      {
        id: 'withdrawal',
        action: { kind: 'withdraw', words: 'Take the disposable extinguisher out of use' },
        inWords: 'A disposable extinguisher is out on 31 December of the 12th year after its year of manufacture',
        limits: [{ kind: 'after', from: 'manufactured', plus: every('P12Y'), counting: 'whole_years' }],
        resets: [{ act: 'replaced', by: [] }],
      },
    ],
    checks: [],
  },
  {
    id: 'fe-us-school',
    scheme: 'us_sailing_school',
    weight: 'law',
    kinds: [...PORTABLE, 'engine_space_extinguisher', 'fixed_co2_system'],
    inWords:
      'Portable, semi-portable and fixed extinguishing equipment is tested every 12 months by a qualified servicing facility, as tables 169.247 say.',
    source: {
      publication: '46 CFR',
      clause: '169.247(a), tables (a)(1),(a)(2)',
      address: 'http://cclme.org/viewcontents/?f=1-46CFR169.txt&o=1',
      status: 'read',
    },
    alsoAsks: ['Foam is discharged, cleaned and recharged; carbon dioxide is weighed.'],
    duties: [
      {
        id: 'service',
        action: { kind: 'service', words: 'Have it serviced by a qualified facility' },
        inWords: 'Extinguishing equipment is serviced every 12 months by a qualified facility',
        limits: [sinceLastDone(every('P12M'))],
        resets: [{ act: 'serviced', by: TECHNICIAN }],
      },
    ],
    checks: [],
  },
  {
    id: 'fe-imo',
    scheme: 'solas',
    weight: 'law',
    kinds: PORTABLE,
    inWords:
      'A portable extinguisher is serviced every year and hydraulically tested every ten years, by a person with demonstrable competence.',
    source: {
      publication: 'Res. A.951(23)',
      clause: '9.1-9.2',
      address: 'https://imorules.com/GUID-1730ECF3-34B1-4933-8DA0-069DC5E81E71.html',
      status: 'read',
    },
    alsoAsks: [
      'One extinguisher of each type and year aboard is discharged every 5 years, whichever it is: told apart from the due list, as a sample.',
      'An extinguisher that fails its hydraulic test is taken out of use: record the withdrawal.',
    ],
    duties: [
      {
        id: 'service',
        action: { kind: 'service', words: 'Have the extinguisher serviced by a competent person' },
        inWords: 'A portable extinguisher is serviced every year',
        limits: [sinceLastDone(every('P1Y'))],
        resets: [{ act: 'serviced', by: COMPETENT }],
      },
      {
        id: 'hydrostatic_test',
        action: { kind: 'test', words: 'Have the extinguisher hydraulically tested' },
        inWords: 'A portable extinguisher is hydraulically tested every 10 years',
        onlyFor: REFILLABLE,
        limits: [sinceLastDone(every('P10Y'))],
        fallback: [sinceMade(every('P10Y'), 'hydraulic test')],
        resets: hydrostaticBy(COMPETENT),
      },
    ],
    checks: [],
  },
  {
    id: 'fe-fixed',
    scheme: 'solas',
    weight: 'law',
    kinds: ['fixed_co2_system'],
    inWords:
      'A fixed carbon dioxide system is looked over every 30 days, serviced every two years give or take three months, has its control valves examined inside every five years and its hoses renewed at ten.',
    source: {
      publication: 'MSC.1/Circ.1318/Rev.1',
      clause: '6.1, 7',
      address: 'https://www.imorules.com/GUID-C9FD35F3-232F-4079-9434-B42D60EDBF55.html',
      status: 'read',
    },
    alsoAsks: [
      'One cylinder in ten is hydrostatically tested at 10 years, and all before 20 years and every 10 years after: a sample over the cylinders, not worked out here.',
      'On a cargo ship the service goes with the intermediate, periodical or renewal survey.',
    ],
    duties: [
      {
        id: 'visual',
        action: { kind: 'inspect', words: 'Look over the fixed carbon dioxide system' },
        inWords: 'A fixed carbon dioxide system is looked over every 30 days',
        limits: [sinceLastDone(every('P30D'))],
        resets: LOOK.resets,
      },
      {
        id: 'service',
        action: { kind: 'service', words: 'Have the system serviced by a trained specialist' },
        inWords: 'A fixed carbon dioxide system is serviced every 2 years, within 3 months either way',
        limits: [sinceLastDone(every('P2Y'))],
        window: { before: 'P3M', after: 'P3M' },
        resets: [{ act: 'serviced', by: TECHNICIAN }],
      },
      {
        id: 'valve_examination',
        action: { kind: 'inspect', words: 'Have the control valves examined inside' },
        inWords: 'The control valves of a fixed carbon dioxide system are examined inside every 5 years',
        limits: [sinceLastDone(every('P5Y'))],
        fallback: [
          {
            kind: 'after',
            from: 'installed',
            plus: every('P5Y'),
            reading: 'no examination of the valves is on record, so the first is counted from fitting',
          },
        ],
        resets: [
          { act: 'tested', tests: ['valve_examination'], by: TECHNICIAN },
          { act: 'inspected', tests: ['valve_examination'], by: TECHNICIAN },
          { act: 'serviced', tests: ['valve_examination'], by: TECHNICIAN },
        ],
      },
      {
        id: 'hoses',
        action: { kind: 'replace', words: "Have the system's hoses renewed" },
        inWords: 'The hoses of a fixed carbon dioxide system are kept no longer than 10 years',
        limits: [{ kind: 'given', attribute: 'hosesFittedOn', plus: 'P10Y' }],
        fallback: [
          {
            kind: 'after',
            from: 'installed',
            plus: every('P10Y'),
            reading: 'no other date is on record for the hoses, so they are taken to be as old as the system',
          },
        ],
        resets: [],
      },
    ],
    checks: [],
  },
  {
    id: 'fe-blanket',
    scheme: 'common_practice',
    weight: 'common_practice',
    kinds: ['fire_blanket'],
    inWords:
      'A fire blanket is looked at every year and renewed at the end of the life its maker gives it, often about seven years.',
    source: NO_SOURCE,
    duties: [
      {
        ...LOOK,
        action: { kind: 'inspect', words: 'Look at the fire blanket' },
        inWords: 'A fire blanket is looked at every year',
        limits: [sinceLastDone(every('P1Y'))],
        fallback: [
          {
            kind: 'after',
            from: 'installed',
            plus: every('P1Y'),
            reading: 'no look is on record, so the first is counted from fitting',
          },
        ],
      },
      {
        id: 'replacement',
        action: { kind: 'replace', words: 'Renew the fire blanket' },
        inWords: 'A fire blanket is renewed at the end of the life that its maker gives it',
        limits: [{ kind: 'after', from: 'installed', plus: { kind: 'own_figure', attribute: 'makerLifeMonths' } }],
        resets: [{ act: 'replaced', by: [] }],
      },
    ],
    checks: [],
  },
  {
    id: 'fe-small',
    scheme: 'maker',
    weight: 'maker',
    kinds: ['engine_space_extinguisher'],
    inWords:
      "An automatic extinguisher in the engine space has its gauge read every month, is weighed every year and is renewed or refilled at the end of its maker's life, often about 5 to 10 years.",
    source: NO_SOURCE,
    duties: [
      {
        ...LOOK,
        id: 'gauge',
        action: { kind: 'inspect', words: 'Read the gauge' },
        inWords: 'The gauge of an automatic extinguisher is read every month',
        limits: [sinceLastDone(every('P1M'))],
      },
      {
        id: 'service',
        action: { kind: 'service', words: 'Have the extinguisher weighed by a competent person' },
        inWords: 'An automatic extinguisher is weighed every year',
        limits: [sinceLastDone(every('P1Y'))],
        resets: [{ act: 'serviced', by: COMPETENT }],
      },
      {
        id: 'replacement',
        action: { kind: 'replace', words: 'Have the extinguisher refilled or renewed' },
        inWords: 'An automatic extinguisher is refilled or renewed at the end of the life that its maker gives it',
        limits: [{ kind: 'after', from: 'manufactured', plus: { kind: 'own_figure', attribute: 'makerLifeMonths' } }],
        resets: [
          { act: 'replaced', by: [] },
          { act: 'overhauled', by: COMPETENT },
        ],
      },
    ],
    checks: [],
  },
];
