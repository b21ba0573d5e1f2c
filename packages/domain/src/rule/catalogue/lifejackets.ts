import type { Capacity } from '../../item/fact.ts';
import type { Duty, Interval, Reset, Rule } from '../rule.ts';
import { every, NO_SOURCE, ownFigure, sinceFitted, sinceLastDone, sinceLastOrFitted } from './shapes.ts';

const STATION: readonly Capacity[] = ['lifejacket_service_station', 'liferaft_service_station', 'maker'];
const SERVICED: Reset = { act: 'serviced', by: STATION };
const LOOKED_AT: readonly Reset[] = [{ act: 'inspected', by: [] }];

const SERVICE: Pick<Duty, 'id' | 'resets'> = { id: 'service', resets: [SERVICED] };

/** Used all the year round: twice as often. */
const WEIGHING: Interval = {
  kind: 'by_condition',
  options: [
    { period: 'P1Y', all: [{ kind: 'attribute_below', attribute: 'seasonMonths', below: 12 }] },
    { period: 'P6M', all: [] },
  ],
};

export const LIFEJACKET_RULES: readonly Rule[] = [
  {
    id: 'lj-uk',
    scheme: 'uk_small_commercial',
    weight: 'certificate',
    kinds: ['inflatable_lifejacket'],
    appliesWhen: [
      { condition: { kind: 'attribute_is', attribute: 'solasApproved', value: false }, ifNotRecorded: 'applies' },
    ],
    inWords:
      "An inflatable lifejacket outside SOLAS is serviced at its maker's interval, usually a year, within a month either way; it is examined every year in between and looked at every week. A service inside that window counts as done on the day it was due, so the next is counted from there; one outside it counts from itself.",
    source: {
      publication: 'MGN 553 as summarised by the national sailing body',
      clause: 'blog',
      address: 'https://mc-7049507c-bba8-48f3-9742-307992-cd.azurewebsites.net/blog/look-after-your-lifejacket',
      status: 'second_hand',
    },
    alsoAsks: ['A small commercial vessel may not carry a lifejacket whose service is overdue.'],
    duties: [
      {
        ...SERVICE,
        action: { kind: 'service', words: 'Have the lifejacket serviced at a station accredited by its maker' },
        inWords:
          "An inflatable lifejacket is serviced at its maker's interval, usually 1 year, within 1 month either way",
        limits: [sinceLastDone(ownFigure('makerIntervalMonths', 'P1Y'))],
        window: { before: 'P1M', after: 'P1M', keepsDay: true },
      },
      {
        id: 'examination',
        action: { kind: 'inspect', words: 'Examine the lifejacket thoroughly: bladder, stitching, head, cylinder' },
        inWords: 'An inflatable lifejacket is examined every year between services',
        limits: [sinceLastDone(every('P1Y'))],
        resets: [{ act: 'inspected', tests: ['examination'], by: [] }, SERVICED],
      },
      {
        id: 'visual',
        action: { kind: 'inspect', words: 'Look at the lifejacket: armed, cylinder tight, undamaged' },
        inWords: 'A lifejacket in use is looked at every week',
        limits: [sinceLastDone(every('P1W'))],
        resets: [...LOOKED_AT, SERVICED],
      },
    ],
    checks: [],
  },
  {
    id: 'lj-solas',
    scheme: 'solas',
    weight: 'law',
    kinds: ['inflatable_lifejacket'],
    inWords:
      'An inflatable lifejacket is serviced at intervals of not more than 12 months. Where that is impracticable the Administration may extend it to 17 months; the extension must be on record.',
    source: {
      publication: 'SOLAS',
      clause: 'III/20.8.1',
      address: 'http://imorules.com/Chunk1853486106.html',
      status: 'read',
    },
    duties: [
      {
        ...SERVICE,
        action: { kind: 'service', words: 'Have the lifejacket serviced at an approved station' },
        inWords: 'An inflatable lifejacket is serviced at intervals of not more than 12 months',
        limits: [sinceLastDone(every('P12M'))],
        extension: { kind: 'authority_record', max: 'P17M' },
      },
    ],
    checks: [],
  },
  {
    id: 'lj-cart',
    scheme: 'maker',
    weight: 'maker',
    kinds: ['lifejacket_firing_head'],
    inWords:
      'The cartridge or hydrostatic head that fires a lifejacket is replaced by the date printed on it; where none is printed, at the end of the life that its maker gives it. Often heard: about two to three years for a dissolving cartridge, and about five, from memory, for a hydrostatic head.',
    source: {
      publication: 'boat club guide',
      clause: 'information guides',
      address: 'https://burtonwatersboatclub.co.uk/members-area/informationguides/',
      status: 'second_hand',
      fromMemory: 'the life of a hydrostatic head; no usual life is counted here',
    },
    duties: [
      {
        id: 'replacement',
        action: { kind: 'replace', words: 'Re-arm the lifejacket with a new cartridge or head' },
        inWords:
          'The firing head of a lifejacket is good until the date printed on it, or as long as its maker gives it',
        limits: [{ kind: 'printed' }],
        fallback: [sinceFitted(ownFigure('makerLifeMonths'))],
        expires: true,
        resets: [{ act: 'replaced', by: ['owner_or_skipper', ...STATION] }],
      },
    ],
    checks: [],
  },
  {
    id: 'lj-cyl',
    scheme: 'maker',
    weight: 'maker',
    kinds: ['lifejacket_gas_cylinder', 'inflatable_lifejacket'],
    inWords:
      'The gas cylinder of a lifejacket is weighed every year, every six months where the jacket is used all year round, and looked at every month. The jacket is blown up and left for 24 hours every year. There is no tolerance below the weight stamped on the cylinder.',
    source: {
      publication: 'angling magazine maintenance column',
      clause: '2019-04-04',
      address: 'http://www.pressreader.com/uk/sea-angler-uk/20190404/282600264232708',
      status: 'second_hand',
    },
    alsoAsks: [
      'A cylinder that weighs less than the weight stamped on it is not used again: record the weighing as failed and the cylinder as replaced or withdrawn.',
    ],
    duties: [
      {
        id: 'weighing',
        action: { kind: 'test', words: 'Weigh the gas cylinder against the weight stamped on it' },
        inWords: 'The gas cylinder is weighed every year, or every 6 months where the jacket is used all year round',
        onlyFor: ['lifejacket_gas_cylinder'],
        ...sinceLastOrFitted(WEIGHING, 'weighing'),
        resets: [{ act: 'tested', tests: ['weighing'], by: [] }],
      },
      {
        id: 'visual',
        action: { kind: 'inspect', words: 'Look at the gas cylinder: rust, thread, screwed home' },
        inWords: 'The gas cylinder is looked at every month',
        onlyFor: ['lifejacket_gas_cylinder'],
        ...sinceLastOrFitted(every('P1M'), 'look'),
        resets: [...LOOKED_AT, { act: 'tested', tests: ['weighing'], by: [] }],
      },
      {
        id: 'inflation_test',
        action: { kind: 'test', words: 'Blow the lifejacket up by mouth or pump and leave it for 24 hours' },
        inWords: 'A lifejacket is blown up and left for 24 hours every year',
        onlyFor: ['inflatable_lifejacket'],
        ...sinceLastOrFitted(every('P1Y'), 'inflation test'),
        resets: [{ act: 'tested', tests: ['inflation_24_hours'], by: [] }, SERVICED],
      },
    ],
    checks: [],
  },
  {
    id: 'lj-life',
    scheme: 'maker',
    weight: 'maker',
    kinds: ['inflatable_lifejacket'],
    inWords:
      'An inflatable lifejacket is taken out of use at the age that its maker gives it. About ten years is often heard, and varies: it is not counted.',
    source: NO_SOURCE,
    duties: [
      {
        id: 'withdrawal',
        action: { kind: 'withdraw', words: 'Take the lifejacket out of use' },
        inWords: 'An inflatable lifejacket is not kept beyond the life that its maker gives it',
        limits: [{ kind: 'after', from: 'manufactured', plus: ownFigure('makerLifeMonths') }],
        resets: [{ act: 'replaced', by: [] }],
      },
    ],
    checks: [],
  },
  {
    id: 'lj-foam',
    scheme: 'common_practice',
    weight: 'common_practice',
    kinds: ['foam_lifejacket'],
    inWords:
      'A foam lifejacket is examined every year, its buoyancy included. One that is damaged or squashed is taken out of use.',
    source: NO_SOURCE,
    alsoAsks: ['A jacket that is damaged or whose foam stays squashed is taken out of use at once.'],
    duties: [
      {
        id: 'examination',
        action: { kind: 'inspect', words: 'Examine the foam lifejacket: cover, stitching, straps, buoyancy' },
        inWords: 'A foam lifejacket is examined every year',
        ...sinceLastOrFitted(every('P1Y'), 'examination'),
        resets: LOOKED_AT,
      },
    ],
    checks: [],
  },
  {
    id: 'lj-us',
    scheme: 'us_recreational',
    weight: 'law',
    kinds: ['inflatable_lifejacket', 'foam_lifejacket'],
    inWords:
      "A lifejacket counts as carried only while it is in serviceable condition. The law gives no interval: how often it is looked at is in the maker's instructions.",
    source: { publication: '33 CFR', clause: '175.23', address: null, status: 'memory' },
    alsoAsks: ['It must be in serviceable condition at any time, whenever it was last looked at.'],
    duties: [
      {
        id: 'inspection',
        action: { kind: 'inspect', words: 'Look whether the lifejacket is in serviceable condition' },
        inWords: 'A lifejacket is kept in serviceable condition, and looked at as often as its maker says',
        limits: [sinceLastDone(ownFigure('makerIntervalMonths'))],
        resets: [...LOOKED_AT, { act: 'serviced', by: [] }],
      },
    ],
    checks: [],
  },
];
