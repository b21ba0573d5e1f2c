import type { Capacity } from '../../item/fact.ts';
import type { Rule, Source } from '../rule.ts';

const STATION: readonly Capacity[] = ['liferaft_service_station'];

const A761: Omit<Source, 'clause'> = {
  publication: 'Res. A.761(18) as amended',
  address: 'https://imorules.com/GUID-A62E94A9-1F92-411A-AA0C-1165D52612A9.html',
  status: 'read',
};

/** The pressure tests, and the dated things packed inside. */
export const LIFERAFT_TEST_RULES: readonly Rule[] = [
  {
    id: 'raft-gi',
    scheme: 'solas',
    weight: 'law',
    kinds: ['liferaft'],
    inWords: 'A liferaft has a gas-inflation test at intervals of five years.',
    source: { ...A761, clause: 'annex inspection list, item .3' },
    duties: [
      {
        id: 'gas_inflation_test',
        action: { kind: 'test', words: 'Have the gas-inflation test done at the service' },
        inWords: 'A liferaft has a gas-inflation test every 5 years',
        limits: [{ kind: 'after', from: 'last_done', plus: { kind: 'fixed', period: 'P5Y' } }],
        fallback: [
          {
            kind: 'after',
            from: 'manufactured',
            plus: { kind: 'fixed', period: 'P5Y' },
            reading: 'no gas-inflation test is on record, so the first is counted from manufacture',
          },
        ],
        resets: [
          { act: 'tested', tests: ['gas_inflation'], by: STATION },
          { act: 'serviced', tests: ['gas_inflation'], by: STATION },
        ],
      },
    ],
    checks: [],
  },
  {
    id: 'raft-nap',
    scheme: 'solas',
    weight: 'law',
    kinds: ['liferaft'],
    inWords:
      'From the end of its tenth year of life a liferaft has a necessary-additional-pressure test every year; before that, the working-pressure test.',
    source: { ...A761, publication: 'Res. A.761(18)', clause: 'annex inspection list, item .4' },
    alsoAsks: ['Earlier, if its condition demands it.'],
    duties: [
      {
        id: 'necessary_additional_pressure_test',
        action: { kind: 'test', words: 'Have the necessary-additional-pressure test done at the service' },
        inWords: 'From the end of its tenth year a liferaft has a necessary-additional-pressure test every year',
        limits: [{ kind: 'after', from: 'last_done', plus: { kind: 'fixed', period: 'P1Y' } }],
        begins: { from: 'manufactured', plus: { kind: 'fixed', period: 'P10Y' } },
        resets: [
          { act: 'tested', tests: ['necessary_additional_pressure'], by: STATION },
          { act: 'serviced', tests: ['necessary_additional_pressure'], by: STATION },
        ],
      },
    ],
    checks: [],
  },
  {
    id: 'raft-pack',
    scheme: 'solas',
    weight: 'law',
    kinds: ['liferaft_packed_contents'],
    inWords: 'A dated thing packed in a liferaft is replaced at the service if it expires before the next service.',
    source: {
      publication: 'Res. MSC.388(94)',
      clause: 'amendment to A.761(18)',
      address: 'https://www.lr.org/en/class-news-resources/05-15/',
      status: 'second_hand',
    },
    duties: [
      {
        id: 'replacement',
        action: { kind: 'replace', words: 'Have it replaced at the service of the liferaft' },
        inWords: 'A dated thing packed in a liferaft is replaced at the service if it expires before the next one',
        limits: [{ kind: 'printed' }],
        expires: true,
        replaceBy: { kind: 'last_event_before_expiry', event: 'liferaft_service' },
        resets: [{ act: 'replaced', by: STATION }],
      },
    ],
    checks: [],
  },
];
