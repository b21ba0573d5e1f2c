import type { Capacity } from '../../item/fact.ts';
import type { Rule } from '../rule.ts';
import { NO_SOURCE, ownFigure, sinceFitted, sinceLastOrFitted } from './shapes.ts';

const ENGINEER: readonly Capacity[] = ['marine_engineer', 'yard'];

export const ENGINE_RULES: readonly Rule[] = [
  {
    id: 'eng-anode',
    scheme: 'common_practice',
    weight: 'common_practice',
    kinds: ['engine_anode'],
    inWords:
      "The anode in an engine or heat exchanger is renewed at the maker's interval, and sooner by its condition. Six months to a year are often heard: neither is counted.",
    source: NO_SOURCE,
    alsoAsks: ['An anode that is eaten away is renewed whenever it is found so.'],
    duties: [
      {
        id: 'replacement',
        action: { kind: 'replace', words: 'Have the anode of the engine or heat exchanger renewed' },
        inWords: "The anode in an engine or heat exchanger is renewed at the maker's interval",
        limits: [sinceFitted(ownFigure('makerIntervalMonths'))],
        resets: [{ act: 'replaced', by: ENGINEER }],
      },
    ],
    checks: [],
  },
  {
    id: 'saildrive',
    scheme: 'maker',
    weight: 'maker',
    kinds: ['saildrive_seal'],
    inWords:
      "A saildrive's hull seal is renewed at the end of the life that its maker gives it, counted from fitting and from the date cast in the rubber, whichever is first; without the maker's figure, seven years. Two, five, seven and ten years are all quoted. It is inspected at the maker's interval; one to two years are quoted, and not counted.",
    source: {
      publication: 'surveyor blog; owner thread',
      clause: 'Jan 2026; thread',
      address: 'https://saltysurveyor.blogspot.com/2026/01/a-critical-boot-guide-to-saildrive.html',
      status: 'second_hand',
    },
    duties: [
      {
        id: 'inspection',
        action: { kind: 'inspect', words: "Have the saildrive's hull seal inspected" },
        inWords: "A saildrive's hull seal is inspected at the maker's interval",
        ...sinceLastOrFitted(ownFigure('makerIntervalMonths'), 'inspection'),
        resets: [{ act: 'inspected', by: [...ENGINEER, 'surveyor'] }],
      },
      {
        id: 'replacement',
        action: { kind: 'replace', words: "Have the saildrive's hull seal renewed, with the boat ashore" },
        inWords:
          "A saildrive's hull seal is renewed at the maker's figure, else at 7 years, from fitting or from the date cast in it, whichever is first",
        limits: [
          sinceFitted(ownFigure('makerLifeMonths', 'P7Y')),
          { kind: 'after', from: 'manufactured', plus: ownFigure('makerLifeMonths', 'P7Y') },
        ],
        resets: [{ act: 'replaced', by: ENGINEER }],
      },
    ],
    checks: [],
  },
];
