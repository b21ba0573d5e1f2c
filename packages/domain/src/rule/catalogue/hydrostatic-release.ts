import type { Capacity } from '../../item/fact.ts';
import type { Duty, Rule } from '../rule.ts';
import { every, ownFigure, sinceLastDone } from './shapes.ts';

const STATION: readonly Capacity[] = ['hydrostatic_release_service_station', 'liferaft_service_station'];

const SERVICE: Pick<Duty, 'id' | 'action' | 'resets'> = {
  id: 'service',
  action: { kind: 'service', words: 'Have the hydrostatic release serviced at an approved station' },
  resets: [{ act: 'serviced', by: STATION }],
};

const REPLACE: Pick<Duty, 'id' | 'action' | 'expires' | 'resets'> = {
  id: 'replacement',
  action: { kind: 'replace', words: 'Replace the hydrostatic release and mark the new one' },
  expires: true,
  resets: [{ act: 'replaced', by: [] }],
};

export const HYDROSTATIC_RELEASE_RULES: readonly Rule[] = [
  {
    id: 'hru-solas',
    scheme: 'solas',
    weight: 'law',
    kinds: ['hydrostatic_release_serviceable'],
    inWords:
      'A hydrostatic release that can be serviced is serviced at intervals of not more than 12 months. The Administration may extend it to 17 months; the extension must be on record. Disposable units are left out.',
    source: {
      publication: 'SOLAS',
      clause: 'III/20.9',
      address: 'https://marinegyaan.com/what-is-maintenance-requirements-of-lsa-equipments-as-per-solas/3',
      status: 'second_hand',
    },
    duties: [
      {
        ...SERVICE,
        inWords: 'A hydrostatic release is serviced at intervals of not more than 12 months',
        limits: [sinceLastDone(every('P12M'))],
        extension: { kind: 'authority_record', max: 'P17M' },
      },
    ],
    checks: [],
  },
  {
    id: 'hru-us',
    scheme: 'us_offshore_supply',
    weight: 'law',
    kinds: ['hydrostatic_release_serviceable', 'hydrostatic_release_disposable'],
    inWords:
      'A hydrostatic release that can be serviced is serviced within 12 months of its manufacture and within 12 months of each service; it may be put off to the next scheduled inspection by up to five months. A disposable one is replaced by the date marked on it.',
    source: {
      publication: '46 CFR',
      clause: '131.585(a)(1),(b)',
      address: 'https://syfert.com/cfr/sections/46-131.585.html',
      status: 'read',
    },
    alsoAsks: ["The springs of the raft's gripe are renewed at the same time."],
    duties: [
      {
        ...SERVICE,
        inWords:
          'A hydrostatic release is serviced within 12 months of its manufacture, and within 12 months of each service',
        onlyFor: ['hydrostatic_release_serviceable'],
        limits: [sinceLastDone(every('P12M'))],
        fallback: [{ kind: 'after', from: 'manufactured', plus: every('P12M') }],
        extension: { kind: 'next_event', event: 'inspection', within: 'P5M' },
      },
      {
        ...REPLACE,
        inWords: 'A disposable hydrostatic release is good until the date marked on it',
        onlyFor: ['hydrostatic_release_disposable'],
        limits: [{ kind: 'printed' }],
      },
    ],
    checks: [],
  },
  {
    id: 'hru-disp',
    scheme: 'maker',
    weight: 'maker',
    kinds: ['hydrostatic_release_disposable'],
    inWords:
      "A disposable hydrostatic release is replaced two years after it was fitted and four years after it was made, or the maker's own life from manufacture, whichever is first, to the end of the month. One page has the two years run from manufacture: that is not counted. Whoever fits it marks the month and year on it.",
    source: { publication: "beacon maker's manual", clause: 'p. 16', address: null, status: 'second_hand' },
    duties: [
      {
        ...REPLACE,
        inWords:
          'A disposable hydrostatic release is replaced 2 years after fitting, 4 years after manufacture and by the date marked on it, whichever is first',
        limits: [
          { kind: 'after', from: 'installed', plus: every('P2Y'), counting: 'whole_months' },
          { kind: 'after', from: 'manufactured', plus: ownFigure('makerLifeMonths', 'P4Y'), counting: 'whole_months' },
          { kind: 'printed' },
        ],
      },
    ],
    checks: [],
  },
  {
    id: 'hru-ca',
    scheme: 'canada_lifesaving',
    weight: 'law',
    kinds: ['hydrostatic_release_serviceable'],
    inWords: 'A hydrostatic release is serviced every year, together with the liferaft.',
    source: {
      publication: 'Ship Safety Bulletin 16/1985',
      clause: 'para 3-4',
      address: 'https://tc.canada.ca/en/marine-transportation/marine-safety/ship-safety-bulletins/bulletin-no-16-1985',
      status: 'read',
    },
    alsoAsks: ['It goes to the depot with the raft: a raft that is due earlier takes it along.'],
    duties: [
      {
        ...SERVICE,
        inWords: 'A hydrostatic release is serviced every year',
        limits: [sinceLastDone(every('P1Y'))],
      },
    ],
    checks: [],
  },
];
