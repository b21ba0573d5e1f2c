import type { Capacity } from '../../item/fact.ts';
import type { Applies, Duty, Interval, Reset, Rule } from '../rule.ts';

const STATION: readonly Capacity[] = ['liferaft_service_station'];
const SERVICED: Reset = { act: 'serviced', by: STATION };
const TWELVE_MONTHS: Interval = { kind: 'fixed', period: 'P12M' };

const SERVICE: Pick<Duty, 'id' | 'action' | 'resets'> = {
  id: 'service',
  action: { kind: 'service', words: 'Have the liferaft serviced at an approved station' },
  resets: [SERVICED],
};

const EXTENDED: Applies['condition'] = { kind: 'attribute_is', attribute: 'extendedInterval', value: true };
const NOT_EXTENDED: Applies['condition'] = { kind: 'attribute_is', attribute: 'extendedInterval', value: false };

export const LIFERAFT_RULES: readonly Rule[] = [
  {
    id: 'raft-solas',
    scheme: 'solas',
    weight: 'law',
    kinds: ['liferaft'],
    appliesWhen: [{ condition: NOT_EXTENDED, ifNotRecorded: 'applies' }],
    inWords:
      'An inflatable liferaft is serviced at intervals of not more than 12 months. Where that is impracticable the Administration may extend it to 17 months; the extension must be on record.',
    source: {
      publication: 'SOLAS',
      clause: 'III/20.8.1',
      address: 'http://imorules.com/Chunk1853486106.html',
      status: 'read',
    },
    duties: [
      {
        ...SERVICE,
        inWords: 'An inflatable liferaft is serviced at intervals of not more than 12 months',
        limits: [{ kind: 'after', from: 'last_done', plus: TWELVE_MONTHS }],
        extension: { kind: 'authority_record', max: 'P17M' },
      },
    ],
    checks: [],
  },
  {
    id: 'raft-ext30',
    scheme: 'solas',
    weight: 'law',
    kinds: ['liferaft'],
    appliesWhen: [{ condition: EXTENDED, ifNotRecorded: 'does_not_apply' }],
    inWords:
      'A liferaft approved for extended intervals is serviced every 30 months and checked aboard every year. After its first ten years it goes back to yearly service.',
    source: {
      publication: 'MSC.1/Circ.1328; NL equivalence',
      clause: '6.1.6-6.1.7; SLS.14/Circ.275',
      address: 'https://puc.overheid.nl/nsi/doc/PUC_2376_14/1',
      status: 'read',
    },
    duties: [
      {
        ...SERVICE,
        action: { kind: 'service', words: 'Have the liferaft serviced at a station appointed for extended intervals' },
        inWords:
          'A liferaft approved for extended intervals is serviced every 30 months, and every 12 months once it is 10 years old',
        limits: [
          {
            kind: 'after',
            from: 'last_done',
            plus: { kind: 'by_age', period: 'P30M', bands: [{ fromAge: 'P10Y', period: 'P12M' }] },
          },
        ],
      },
      {
        id: 'onboard_check',
        action: { kind: 'inspect', words: 'Have a certified person check the liferaft aboard' },
        inWords: 'A liferaft on extended intervals is checked aboard every year by a certified person',
        limits: [{ kind: 'after', from: 'last_done', plus: { kind: 'fixed', period: 'P1Y' } }],
        resets: [{ act: 'inspected', tests: ['onboard_check'], by: ['competent_person', ...STATION] }, SERVICED],
      },
    ],
    checks: [],
  },
  {
    id: 'raft-us',
    scheme: 'us_small_passenger',
    weight: 'law',
    kinds: ['liferaft'],
    inWords:
      'An inflatable liferaft is serviced every 12 months, the first time up to 24 months from new; it may be put off to the next scheduled inspection by up to five months.',
    source: { publication: '46 CFR', clause: '185.730; 160.151-57', address: null, status: 'memory' },
    duties: [
      {
        ...SERVICE,
        inWords: 'An inflatable liferaft is serviced every 12 months',
        limits: [{ kind: 'after', from: 'last_done', plus: TWELVE_MONTHS }],
        fallback: [
          {
            kind: 'after',
            from: 'manufactured',
            plus: { kind: 'fixed', period: 'P24M' },
            fromMemory: true,
            reading: 'no service is on record, so it is taken as new and the first interval as 24 months',
          },
        ],
        extension: { kind: 'next_event', event: 'inspection', within: 'P5M' },
      },
    ],
    checks: [],
  },
  {
    id: 'raft-ca',
    scheme: 'canada_lifesaving',
    weight: 'law',
    kinds: ['liferaft'],
    inWords:
      'Inflatable equipment is serviced every year; every two years where the vessel is no convention ship, operates fewer than seven months a year and only in months above freezing, the raft is under 15 years old, its cylinder test outlasts the interval and it is stored dry off season; every 30 months where it is approved for that.',
    source: {
      publication: 'Life Saving Equipment Regulations C.R.C. c.1436',
      clause: 's.119(1)-(4)',
      address: 'https://laws-lois.justice.gc.ca/eng/Regulations/C.R.C.,_c._1436/section-119-20231220.html',
      status: 'read',
    },
    duties: [
      {
        ...SERVICE,
        inWords:
          'Inflatable equipment is serviced every year, or at the longer interval of section 119 while all of its conditions hold',
        limits: [
          {
            kind: 'after',
            from: 'last_done',
            plus: {
              kind: 'by_condition',
              options: [
                { period: 'P30M', all: [EXTENDED] },
                {
                  period: 'P2Y',
                  all: [
                    { kind: 'attribute_is', attribute: 'conventionShip', value: false },
                    { kind: 'attribute_below', attribute: 'seasonMonths', below: 7 },
                    { kind: 'attribute_is', attribute: 'operatesOnlyMonthsMeanDailyMinAbove0C', value: true },
                    { kind: 'younger_than', age: 'P15Y' },
                    { kind: 'valid_through_next', attribute: 'cylinderTestValidTo' },
                    { kind: 'attribute_is', attribute: 'dryStoredOffSeason', value: true },
                  ],
                },
                { period: 'P1Y', all: [] },
              ],
            },
          },
        ],
      },
    ],
    checks: [],
  },
  {
    id: 'raft-9650',
    scheme: 'uk_small_commercial',
    weight: 'certificate',
    kinds: ['liferaft'],
    appliesWhen: [
      { condition: { kind: 'attribute_is', attribute: 'standard', value: 'iso_9650' }, ifNotRecorded: 'applies' },
    ],
    inWords:
      "An ISO 9650 liferaft is serviced at its maker's interval by the maker's accredited station, and no later than the expiry of what is packed in it. Commonly, from memory: three years from new, then yearly from a stated age.",
    source: {
      publication: 'MGN 553 (M+F) Amdt 1',
      clause: 's.4 (open letter March 2019)',
      address: 'https://content.yudu.com/libraryHtml/A43jdw/TheReportMarch2019Is/25.html',
      status: 'second_hand',
      fromMemory: 'the usual lengths of the interval; none of them is counted here',
    },
    duties: [
      {
        ...SERVICE,
        action: { kind: 'service', words: "Have the liferaft serviced at the maker's accredited station" },
        inWords:
          "An ISO 9650 liferaft is serviced at its maker's interval, and no later than the expiry of what is packed in it",
        limits: [{ kind: 'after', from: 'last_done', plus: { kind: 'own_figure', attribute: 'makerIntervalMonths' } }],
        cappedBy: [{ kind: 'given', attribute: 'packedContentsExpireOn' }],
      },
    ],
    checks: [],
  },
  {
    id: 'raft-mgn548',
    scheme: 'uk_small_commercial',
    weight: 'certificate',
    kinds: ['liferaft'],
    appliesWhen: [
      { condition: { kind: 'attribute_is', attribute: 'standard', value: 'solas' }, ifNotRecorded: 'applies' },
    ],
    inWords: 'A SOLAS-certificated liferaft keeps the 12-month SOLAS interval whatever vessel carries it.',
    source: {
      publication: 'MGN 548 (M+F) Amdt 1 (22 July 2024)',
      clause: '1.x',
      address:
        'https://www.gov.uk/government/publications/mgn-548-mf-amendment-1-life-saving-appliances-servicing-requirements-for-solas-inflatable-life-saving-appliances-at-approved-service-stations/mgn-548-mf-amendment-1-life-saving-appliances-servicing-requirements-for-solas-inflatable-life-saving-appliances-at-approved-service-stations',
      status: 'read',
    },
    duties: [
      {
        ...SERVICE,
        inWords: 'A SOLAS-certificated liferaft is serviced every 12 months whatever vessel carries it',
        limits: [{ kind: 'after', from: 'last_done', plus: TWELVE_MONTHS }],
      },
    ],
    checks: [],
  },
  {
    id: 'raft-us-school',
    scheme: 'us_sailing_school',
    weight: 'law',
    kinds: ['liferaft', 'hydrostatic_release_serviceable', 'hydrostatic_release_disposable'],
    inWords:
      'Proof that the liferaft and its hydrostatic release have been serviced at an approved facility is checked at each inspection.',
    source: {
      publication: '46 CFR',
      clause: '169.245(f) (section number inferred; precedes 169.247), servicing per 160.051 and 160.062',
      address: 'http://cclme.org/viewcontents/?f=1-46CFR169.txt&o=1',
      status: 'read',
    },
    duties: [
      {
        id: 'inspection',
        action: { kind: 'inspect', words: 'Have proof of the service ready for the marine inspector' },
        inWords: 'Proof of the service at an approved facility is checked at each inspection',
        limits: [{ kind: 'next_event', event: 'inspection' }],
        resets: [{ act: 'inspected', by: ['marine_inspector'] }],
      },
    ],
    checks: [],
  },
];
