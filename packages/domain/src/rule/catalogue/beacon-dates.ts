import type { Capacity } from '../../item/fact.ts';
import type { Applies, Duty, Rule } from '../rule.ts';
import { every, ownFigure, sinceLastDone } from './shapes.ts';

const TESTER: readonly Capacity[] = ['radio_surveyor', 'shore_based_maintenance_provider', 'competent_person'];

const ANNUAL_TEST: Pick<Duty, 'action' | 'resets'> = {
  action: { kind: 'test', words: 'Have a radio surveyor or competent person test the beacon and report' },
  resets: [{ act: 'tested', tests: ['annual_test'], by: TESTER }],
};

const PASSENGER: Applies['condition'] = { kind: 'attribute_is', attribute: 'passengerShip', value: true };
const NOT_PASSENGER: Applies['condition'] = { kind: 'attribute_is', attribute: 'passengerShip', value: false };

const CONFIRMED: Duty['resets'] = [{ act: 'inspected', tests: ['details_confirmed'], by: [] }];

/** What ends a beacon's battery, what goes with the certificate's anniversary, and whose details it is under. */
export const BEACON_DATE_RULES: readonly Rule[] = [
  {
    id: 'epirb-bat',
    scheme: 'us_small_passenger',
    weight: 'law',
    kinds: ['epirb'],
    inWords: 'The battery of an EPIRB is replaced by the date marked on it or after use, whichever comes first.',
    source: {
      publication: '46 CFR',
      clause: '185.728(b)',
      address: 'https://lexbuild.dev/ecfr/title-46/chapter-I/part-185/section-185.728',
      status: 'read',
    },
    duties: [
      {
        id: 'battery',
        action: { kind: 'replace', words: "Have the battery replaced by the maker's agent" },
        inWords: 'The battery of an EPIRB is good until the date marked on it, and no longer than until it is used',
        limits: [
          { kind: 'printed', renewedBy: 'battery' },
          { kind: 'triggered', events: [], facts: ['activated'] },
        ],
        expires: true,
        resets: [{ act: 'serviced', tests: ['battery'], by: ['maker', 'shore_based_maintenance_provider'] }],
      },
    ],
    checks: [],
  },
  {
    id: 'epirb-ann',
    scheme: 'solas',
    weight: 'law',
    kinds: ['epirb'],
    inWords:
      'An EPIRB is tested every year: on a passenger ship within the three months before her safety certificate expires, on any other within three months either way of the anniversary of hers. Where it is not recorded which she is, she is taken for no passenger ship. For vessels outside the convention the United Kingdom strongly recommends the same.',
    source: {
      publication: 'SOLAS IV/15.9.1; MGN 673 1.1.1',
      clause: 'IV/15.9; MSC.1/Circ.1040',
      address:
        'https://www.gov.uk/government/publications/mgn-673-mf-radio-communications-non-solas-vessel/mgn-673-mf-radio-communications-non-solas-vessels',
      status: 'read',
    },
    alsoAsks: [
      'The test takes in the identity sent, the registration, and the dates of the battery and the hydrostatic release.',
      'On a ship that carries no passengers it may also be done within the three months before her certificate expires.',
    ],
    duties: [
      {
        ...ANNUAL_TEST,
        id: 'annual_test',
        appliesWhen: [{ condition: NOT_PASSENGER, ifNotRecorded: 'applies' }],
        inWords: 'An EPIRB is tested every year within 3 months either way of the anniversary of the certificate',
        limits: [{ kind: 'given_anniversary', attribute: 'anniversaryDate', window: { before: 'P3M', after: 'P3M' } }],
      },
      {
        ...ANNUAL_TEST,
        id: 'annual_test_passenger',
        appliesWhen: [{ condition: PASSENGER, ifNotRecorded: 'does_not_apply' }],
        inWords: 'An EPIRB on a passenger ship is tested every year within 3 months before the certificate expires',
        limits: [{ kind: 'given_anniversary', attribute: 'anniversaryDate', window: { before: 'P3M', after: 'P0D' } }],
      },
    ],
    checks: [],
  },
  {
    id: 'epirb-reg',
    scheme: 'radio_licence',
    weight: 'law',
    kinds: ['ship_radio_licence', 'epirb'],
    inWords:
      "A United Kingdom ship radio licence is revoked unless its details are validated or amended once in ten years. A beacon's registration is confirmed at the interval of its own registry: without a figure for that, two years are counted, which is the United States' interval, from memory. A change of owner ends both.",
    source: {
      publication: 'Ofcom ship radio licence terms',
      clause: 'licence terms',
      address:
        'https://www.ofcom.org.uk/cymru/manage-your-licence/radiocommunication-licences/ships-radio/terms-conditions',
      status: 'read',
      fromMemory: "the two years of the United States' beacon registry",
    },
    alsoAsks: ['Any other change of the details, as of name, call sign or MMSI, is amended at once.'],
    duties: [
      {
        id: 'licence',
        action: { kind: 'inspect', words: 'Validate or amend the details of the ship radio licence' },
        inWords: "A ship radio licence's details are validated or amended once in 10 years, and when she changes owner",
        onlyFor: ['ship_radio_licence'],
        limits: [sinceLastDone(every('P10Y')), { kind: 'triggered', events: ['change_of_owner'], facts: [] }],
        resets: CONFIRMED,
      },
      {
        id: 'registration',
        action: { kind: 'inspect', words: "Confirm or amend the beacon's registration" },
        inWords: "A beacon's registration is confirmed at its registry's interval, and amended when she changes owner",
        onlyFor: ['epirb'],
        limits: [
          { kind: 'after', from: 'last_done', plus: ownFigure('registrationMonths', 'P2Y'), fromMemory: true },
          { kind: 'triggered', events: ['change_of_owner'], facts: [] },
        ],
        resets: CONFIRMED,
      },
    ],
    checks: [],
  },
];
