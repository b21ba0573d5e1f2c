import type { Duty, Interval, Rule } from '../rule.ts';
import { every, NO_SOURCE, ownFigure, sinceFitted, sinceLastDone, sinceLastOrFitted } from './shapes.ts';

/** Fresh water allows the longer interval; what is not recorded is taken for salt. */
const DRY_DOCK: Interval = {
  kind: 'by_condition',
  options: [
    { period: 'P5Y', all: [{ kind: 'attribute_is', attribute: 'saltWaterOverThreeMonths', value: false }] },
    { period: 'P2Y', all: [] },
  ],
};

const EXAMINATION: Pick<Duty, 'id' | 'limits' | 'resets'> = {
  id: 'dry_dock',
  limits: [sinceLastDone(DRY_DOCK)],
  resets: [{ act: 'inspected', tests: ['out_of_water'], by: ['marine_inspector'] }],
};

export const HULL_RULES: readonly Rule[] = [
  {
    id: 'us-dd',
    scheme: 'us_small_passenger',
    weight: 'law',
    kinds: ['hull'],
    inWords:
      'The hull is examined in dry dock, with its structure inside, every two years where the vessel is in salt water for more than three months in any twelve, and every five years otherwise.',
    source: { publication: '46 CFR', clause: '176.600', address: null, status: 'memory' },
    alsoAsks: [
      'The officer in charge of marine inspection may put the examination off; how far is not said, so no extension is counted here.',
    ],
    duties: [
      {
        ...EXAMINATION,
        action: { kind: 'inspect', words: 'Have the marine inspector examine her in dry dock and inside' },
        inWords: 'The hull is examined in dry dock every 2 years in salt water, every 5 years otherwise',
      },
    ],
    checks: [],
  },
  {
    id: 'us-dd-school',
    scheme: 'us_sailing_school',
    weight: 'law',
    kinds: ['hull'],
    inWords: 'The hull is examined in dry dock every two years in salt water, and every five years in fresh.',
    source: { publication: '46 CFR', clause: '169.229', address: null, status: 'memory' },
    duties: [
      {
        ...EXAMINATION,
        action: { kind: 'inspect', words: 'Have the marine inspector examine her in dry dock' },
        inWords: 'The hull is examined in dry dock every 2 years in salt water, every 5 years in fresh',
      },
    ],
    checks: [],
  },
  {
    id: 'ins-survey',
    scheme: 'insurer',
    weight: 'insurer',
    kinds: ['hull'],
    inWords:
      "Insurers in the United Kingdom commonly ask for a condition survey out of the water when a boat is about twenty years old, and every five years after that. In the United States it is from about ten years, and every five to seven, sometimes three. The vessel's own insurer decides.",
    source: {
      publication: "surveyor's page",
      clause: 'insurance survey',
      address: 'https://www.adrianstoneyachtsurveys.co.uk/insurance-survey',
      status: 'second_hand',
    },
    alsoAsks: ['The survey counts when the insurer has accepted its report.'],
    duties: [
      {
        id: 'survey',
        action: { kind: 'inspect', words: 'Have a surveyor make a condition survey out of the water for the insurer' },
        inWords:
          "Insurers commonly ask for a survey out of the water at about 20 years of age and every 5 years after that, or at the insurer's own age and interval",
        limits: [sinceLastDone(ownFigure('insurerIntervalMonths', 'P5Y'))],
        begins: { from: 'manufactured', plus: ownFigure('insurerFirstSurveyMonths', 'P20Y') },
        resets: [{ act: 'inspected', tests: ['out_of_water'], by: ['surveyor'] }],
      },
    ],
    checks: [],
  },
  {
    id: 'antifoul',
    scheme: 'common_practice',
    weight: 'common_practice',
    kinds: ['antifouling'],
    inWords: 'Antifouling is renewed every year; a multi-season coating every two years.',
    source: NO_SOURCE,
    duties: [
      {
        id: 'renewal',
        action: { kind: 'replace', words: 'Have the antifouling renewed' },
        inWords: 'Antifouling is renewed every year, a multi-season coating every 2 years',
        limits: [
          sinceFitted({
            kind: 'by_condition',
            options: [
              { period: 'P2Y', all: [{ kind: 'attribute_is', attribute: 'multiSeason', value: true }] },
              { period: 'P1Y', all: [] },
            ],
          }),
        ],
        resets: [{ act: 'replaced', by: ['yard', 'owner_or_skipper'] }],
      },
    ],
    checks: [],
  },
  {
    id: 'anode',
    scheme: 'common_practice',
    weight: 'common_practice',
    kinds: ['hull_anode'],
    inWords:
      'A hull anode is looked at every year, at the next haul-out where one comes before, and renewed when about half of it is gone.',
    source: NO_SOURCE,
    alsoAsks: ['An anode of which about half is gone is renewed at the same haul-out.'],
    duties: [
      {
        id: 'inspection',
        action: { kind: 'inspect', words: 'Have the hull anode looked at, and renewed if about half is gone' },
        inWords: 'A hull anode is looked at every year, or at the next haul-out, whichever is first',
        limits: [sinceLastDone(every('P1Y')), { kind: 'next_event', event: 'haul_out' }],
        fallback: sinceLastOrFitted(every('P1Y'), 'look').fallback,
        resets: [{ act: 'inspected', by: ['yard', 'surveyor', 'owner_or_skipper'] }],
      },
    ],
    checks: [],
  },
];
