import type { Attribute, AttributeId, AttributeType } from '../attribute.ts';

const YES_NO: AttributeType = { kind: 'yes_no' };
const DATE: AttributeType = { kind: 'date' };

/** What it is, how it is kept, and dates that no fact holds. */
export const PARTICULARS = {
  standard: {
    id: 'standard',
    type: {
      kind: 'choice',
      choices: [
        { value: 'solas', words: 'SOLAS certificated' },
        { value: 'iso_9650', words: 'ISO 9650' },
        { value: 'other', words: 'another standard or none' },
      ],
    },
    words: 'standard that the raft was built to',
    whereFound: 'the plate on the container and the certificate',
  },
  extendedInterval: {
    id: 'extendedInterval',
    type: YES_NO,
    words: 'raft type-approved for extended service intervals',
    whereFound: 'the type-approval certificate',
  },
  conventionShip: {
    id: 'conventionShip',
    type: YES_NO,
    words: 'Safety Convention ship',
    whereFound: "the vessel's certificates",
  },
  operatesOnlyMonthsMeanDailyMinAbove0C: {
    id: 'operatesOnlyMonthsMeanDailyMinAbove0C',
    type: YES_NO,
    words: 'operates only in months whose mean daily minimum is above 0 °C',
    whereFound: 'the operating schedule and climate tables',
  },
  cylinderTestValidTo: {
    id: 'cylinderTestValidTo',
    type: DATE,
    words: "day to which the gas cylinder's hydrostatic test is valid",
    whereFound: 'the stamp on the cylinder or the service certificate',
  },
  dryStoredOffSeason: {
    id: 'dryStoredOffSeason',
    type: YES_NO,
    words: 'raft stored dry out of season',
    whereFound: 'the storage record',
  },
  packedContentsExpireOn: {
    id: 'packedContentsExpireOn',
    type: DATE,
    words: 'earliest expiry among the things packed in the raft',
    whereFound: 'the list of contents on the last service certificate',
  },
  pressure: {
    id: 'pressure',
    type: {
      kind: 'choice',
      choices: [
        { value: 'stored_pressure', words: 'stored pressure (it has a gauge)' },
        { value: 'cartridge', words: 'cartridge operated' },
      ],
    },
    words: 'how the agent is driven out',
    whereFound: 'the label',
  },
  cylinderMaterial: {
    id: 'cylinderMaterial',
    type: {
      kind: 'choice',
      choices: [
        { value: 'mild_steel', words: 'mild steel' },
        { value: 'stainless_steel', words: 'stainless steel' },
        { value: 'aluminium', words: 'aluminium' },
      ],
    },
    words: 'material of the cylinder',
    whereFound: 'the label',
  },
  hosesFittedOn: {
    id: 'hosesFittedOn',
    type: DATE,
    words: "day on which the system's hoses were fitted",
    whereFound: 'the installation or service report',
  },
  expiryLessOneDay: {
    id: 'expiryLessOneDay',
    type: YES_NO,
    words: 'issuer dates the expiry one day before the corresponding day',
    whereFound: 'an earlier certificate beside the report of its survey',
  },
  anniversaryDate: {
    id: 'anniversaryDate',
    type: DATE,
    words: 'next anniversary date of the certificate',
    whereFound: 'the certificate: day and month of its expiry, unless another is endorsed on it',
  },
  passengerShip: {
    id: 'passengerShip',
    type: YES_NO,
    words: 'passenger ship under the convention',
    whereFound: "the vessel's certificates",
  },
  solasApproved: {
    id: 'solasApproved',
    type: YES_NO,
    words: 'approved under SOLAS',
    whereFound: 'the label',
  },
  contentsExpireOn: {
    id: 'contentsExpireOn',
    type: DATE,
    words: 'earliest expiry among its contents',
    whereFound: 'the packs themselves, or the list kept with them',
  },
  saltWaterOverThreeMonths: {
    id: 'saltWaterOverThreeMonths',
    type: YES_NO,
    words: 'in salt water for more than three months in any twelve',
    whereFound: 'the operating schedule or the log book',
  },
  multiSeason: {
    id: 'multiSeason',
    type: YES_NO,
    words: 'multi-season antifouling',
    whereFound: "the tin or the yard's invoice",
  },
  hoseLifeCountsFrom: {
    id: 'hoseLifeCountsFrom',
    type: {
      kind: 'choice',
      choices: [
        { value: 'earliest', words: 'the earlier of fitting and manufacture' },
        { value: 'fitting', words: 'its fitting, where that is on record, as the trade has it' },
      ],
    },
    words: 'what the life of the hose counts from',
    whereFound: "whoever answers for the boat decides; the gas engineer's advice",
  },
  fittingMaterial: {
    id: 'fittingMaterial',
    type: {
      kind: 'choice',
      choices: [
        { value: 'plain_brass', words: 'plain brass' },
        { value: 'dezincification_resistant_brass', words: 'dezincification-resistant brass' },
        { value: 'bronze', words: 'bronze' },
        { value: 'composite', words: 'composite' },
        { value: 'stainless_steel', words: 'stainless steel' },
      ],
    },
    words: 'what the fitting is made of',
    whereFound: "cast or stamped on it, or the yard's invoice",
  },
} as const satisfies { readonly [Id in AttributeId]?: Attribute };
