import type { Condition, Duty, Rule, Source } from '../rule.ts';
import { every, ownFigure, sinceFitted } from './shapes.ts';

const HOSE_ARTICLE: Source = {
  publication: 'trade press',
  clause: 'hose article',
  address: 'https://www.proptalk.com/dangers-ignoring-marine-hoses',
  status: 'second_hand',
};

const GAS_TRADE: Source = {
  publication: 'marine gas trade statements',
  clause: 'service-life statement',
  address: null,
  status: 'common_practice',
};

const RENEWED_BY_GAS_ENGINEER: Pick<Duty, 'action' | 'resets'> = {
  action: { kind: 'replace', words: 'Have a gas engineer renew the gas hose' },
  resets: [{ act: 'replaced', by: ['gas_engineer'] }],
};

function countsFrom(value: string): Condition {
  return { kind: 'attribute_is', attribute: 'hoseLifeCountsFrom', value };
}

export const HOSE_RULES: readonly Rule[] = [
  {
    id: 'hose-sea',
    scheme: 'common_practice',
    weight: 'common_practice',
    kinds: ['seawater_hose'],
    inWords:
      'Rubber hoses below the waterline are renewed at the end of the life that their maker gives them, else at about ten years, the average. One expert advises four for engine cooling.',
    source: HOSE_ARTICLE,
    duties: [
      {
        id: 'replacement',
        action: { kind: 'replace', words: 'Renew the seawater hose' },
        inWords:
          'A seawater hose is renewed at the end of the life that its maker gives it, else about 10 years after it was fitted',
        limits: [sinceFitted(ownFigure('makerLifeMonths', 'P10Y'))],
        fallback: [{ kind: 'after', from: 'manufactured', plus: ownFigure('makerLifeMonths', 'P10Y') }],
        resets: [{ act: 'replaced', by: [] }],
      },
    ],
    checks: [],
  },
  {
    id: 'hose-fuel',
    scheme: 'common_practice',
    weight: 'common_practice',
    kinds: ['fuel_hose'],
    inWords:
      'A fuel hose is inspected every year, is suspect from ten years and is renewed at twenty, counted from the date printed on it.',
    source: {
      publication: 'boat-owner association tip quoted in forum',
      clause: '2012 notice',
      address: 'https://sailfar.net/forum/index.php/topic,3564.0.html',
      status: 'second_hand',
    },
    duties: [
      {
        id: 'inspection',
        action: { kind: 'inspect', words: 'Inspect the fuel hose' },
        inWords: 'A fuel hose is inspected every year',
        limits: [{ kind: 'after', from: 'last_done', plus: { kind: 'fixed', period: 'P1Y' } }],
        fallback: [
          {
            kind: 'after',
            from: 'installed',
            plus: { kind: 'fixed', period: 'P1Y' },
            reading: 'no inspection is on record, so the first is counted from fitting',
          },
        ],
        resets: [{ act: 'inspected', by: ['marine_engineer', 'surveyor', 'yard'] }],
      },
      {
        id: 'withdrawal',
        action: { kind: 'withdraw', words: 'Take the fuel hose out of use and renew it' },
        inWords: 'A fuel hose is not kept beyond 20 years from the date of manufacture printed on it',
        limits: [{ kind: 'after', from: 'manufactured', plus: { kind: 'fixed', period: 'P20Y' } }],
        suspectFromAge: 'P10Y',
        resets: [{ act: 'replaced', by: ['marine_engineer', 'yard'] }],
      },
    ],
    checks: [],
  },
  {
    id: 'hose-exh',
    scheme: 'common_practice',
    weight: 'common_practice',
    kinds: ['wet_exhaust_hose'],
    inWords:
      'A wet exhaust hose is inspected every year and renewed about ten years after fitting: the average for rubber hose, as exhaust hose is not dated apart.',
    source: HOSE_ARTICLE,
    duties: [
      {
        id: 'inspection',
        action: { kind: 'inspect', words: 'Inspect the wet exhaust hose' },
        inWords: 'A wet exhaust hose is inspected every year',
        limits: [{ kind: 'after', from: 'last_done', plus: { kind: 'fixed', period: 'P1Y' } }],
        fallback: [
          {
            kind: 'after',
            from: 'installed',
            plus: { kind: 'fixed', period: 'P1Y' },
            reading: 'no inspection is on record, so the first is counted from fitting',
          },
        ],
        resets: [{ act: 'inspected', by: ['marine_engineer', 'surveyor', 'yard'] }],
      },
      {
        id: 'replacement',
        action: { kind: 'replace', words: 'Renew the wet exhaust hose' },
        inWords: 'A wet exhaust hose is renewed about 10 years after it was fitted',
        limits: [{ kind: 'after', from: 'installed', plus: { kind: 'fixed', period: 'P10Y' } }],
        resets: [{ act: 'replaced', by: ['marine_engineer', 'yard'] }],
      },
    ],
    checks: [],
  },
  {
    id: 'lpg-hose',
    scheme: 'common_practice',
    weight: 'common_practice',
    kinds: ['gas_hose'],
    inWords:
      'A gas hose is renewed by the replace-by date printed on it, and five years after fitting or manufacture. The trade goes by the fitting where it is on record; the earliest known date binds here, as a hose ages in stock too, unless it is set that the fitting counts.',
    source: GAS_TRADE,
    duties: [
      {
        ...RENEWED_BY_GAS_ENGINEER,
        id: 'replacement',
        appliesWhen: [{ condition: countsFrom('earliest'), ifNotRecorded: 'applies' }],
        inWords:
          'A gas hose is renewed by any date printed on it, and 5 years after fitting or manufacture, whichever is first',
        limits: [
          { kind: 'printed' },
          sinceFitted(every('P5Y')),
          { kind: 'after', from: 'manufactured', plus: every('P5Y'), counting: 'whole_months' },
        ],
      },
      {
        ...RENEWED_BY_GAS_ENGINEER,
        id: 'replacement_from_fitting',
        appliesWhen: [{ condition: countsFrom('fitting'), ifNotRecorded: 'does_not_apply' }],
        inWords:
          'A gas hose is renewed by any date printed on it and 5 years after fitting, or without a fitting date 5 years after manufacture',
        limits: [{ kind: 'printed' }, sinceFitted(every('P5Y'))],
        fallback: [{ kind: 'after', from: 'manufactured', plus: every('P5Y'), counting: 'whole_months' }],
      },
    ],
    checks: [],
  },
  {
    id: 'lpg-reg',
    scheme: 'common_practice',
    weight: 'common_practice',
    kinds: ['gas_regulator'],
    inWords: 'A gas regulator is renewed ten years after it was fitted.',
    source: GAS_TRADE,
    duties: [
      {
        id: 'replacement',
        action: { kind: 'replace', words: 'Have a gas engineer renew the regulator' },
        inWords: 'A gas regulator is renewed 10 years after it was fitted',
        limits: [{ kind: 'after', from: 'installed', plus: { kind: 'fixed', period: 'P10Y' } }],
        resets: [{ act: 'replaced', by: ['gas_engineer'] }],
      },
    ],
    checks: [],
  },
];
