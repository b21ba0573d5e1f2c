import type { Duty, Rule } from '../rule.ts';
import { every, sinceLastDone } from './shapes.ts';

const SELF_TEST: Pick<Duty, 'id' | 'action' | 'limits' | 'resets'> = {
  id: 'self_test',
  action: { kind: 'test', words: "Run the beacon's self-test as its maker says, and log it" },
  limits: [sinceLastDone(every('P1M'))],
  resets: [{ act: 'tested', tests: ['self_test'], by: [] }],
};

export const BEACON_RULES: readonly Rule[] = [
  {
    id: 'epirb-month',
    scheme: 'us_small_passenger',
    weight: 'law',
    kinds: ['epirb'],
    inWords:
      'An EPIRB is tested every month and the test is logged. It is counted here from day to day, so a test on 3 March asks for the next by 3 April.',
    source: {
      publication: '46 CFR',
      clause: '185.728(a),(c)',
      address: 'https://lexbuild.dev/ecfr/title-46/chapter-I/part-185/section-185.728',
      status: 'read',
    },
    alsoAsks: ['A beacon packed in a liferaft is left out: it is looked after when the raft is serviced.'],
    duties: [{ ...SELF_TEST, inWords: 'An EPIRB is tested every month and the test is logged' }],
    checks: [],
  },
  {
    id: 'epirb-sbm',
    scheme: 'solas',
    weight: 'law',
    kinds: ['epirb'],
    inWords:
      'An EPIRB has shore-based maintenance every five years by an approved provider. For vessels outside the convention the United Kingdom recommends the same.',
    source: {
      publication: 'SOLAS IV/15.9.2; MSC.1/Circ.1039; MGN 673 1.1.2',
      clause: 'as named',
      address:
        'https://www.gov.uk/government/publications/mgn-673-mf-radio-communications-non-solas-vessel/mgn-673-mf-radio-communications-non-solas-vessels',
      status: 'read',
    },
    duties: [
      {
        id: 'shore_based_maintenance',
        action: { kind: 'service', words: 'Have shore-based maintenance done by an approved provider' },
        inWords: 'An EPIRB has shore-based maintenance every 5 years',
        limits: [sinceLastDone(every('P5Y'))],
        resets: [{ act: 'serviced', by: ['shore_based_maintenance_provider'] }],
      },
    ],
    checks: [],
  },
  {
    id: 'epirb-min',
    scheme: 'maker',
    weight: 'maker',
    kinds: ['epirb'],
    inWords:
      "An EPIRB goes to its maker's agent five years after it was fitted or last serviced, and no later than the date on its battery. The maker that says so is one of several: the beacon's own manual comes first.",
    source: { publication: "beacon maker's manual", clause: 'p. 16', address: null, status: 'second_hand' },
    duties: [
      {
        id: 'service',
        action: { kind: 'service', words: "Have the beacon serviced by the maker's agent" },
        inWords:
          'An EPIRB is serviced 5 years after it was fitted or last serviced, and by the date on its battery, whichever is first',
        limits: [sinceLastDone(every('P5Y')), { kind: 'printed', renewedBy: 'battery' }],
        resets: [
          { act: 'serviced', by: ['maker', 'shore_based_maintenance_provider'] },
          { act: 'installed', by: [] },
          { act: 'replaced', by: [] },
        ],
      },
    ],
    checks: [],
  },
  {
    id: 'sart',
    scheme: 'solas',
    weight: 'law',
    kinds: ['search_and_rescue_transponder', 'personal_locator_beacon'],
    inWords:
      'The battery of a search and rescue transponder or personal beacon is changed by the date on it; the self-test is run every month.',
    source: { publication: null, clause: null, address: null, status: 'memory' },
    alsoAsks: ['The self-test is run no more often than the maker allows: each one takes from the battery.'],
    duties: [
      {
        id: 'battery',
        action: { kind: 'replace', words: "Have the battery changed by the maker's agent" },
        inWords: 'A transponder or personal beacon is good until the date on its battery',
        limits: [{ kind: 'printed', renewedBy: 'battery' }],
        expires: true,
        resets: [{ act: 'serviced', tests: ['battery'], by: ['maker', 'shore_based_maintenance_provider'] }],
      },
      { ...SELF_TEST, inWords: 'A transponder or personal beacon is self-tested every month' },
    ],
    checks: [],
  },
];
