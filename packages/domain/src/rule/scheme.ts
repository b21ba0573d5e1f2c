/** Bodies of rules that a vessel can be kept under, and what stands behind each. */

/** What stands behind an obligation. Advice is never mixed into the count of legal lapses. */
export const WEIGHTS = ['law', 'certificate', 'insurer', 'maker', 'common_practice', 'own'] as const;
export type Weight = (typeof WEIGHTS)[number];

export const SCHEME_IDS = [
  'solas',
  'us_recreational',
  'us_sailing_school',
  'us_small_passenger',
  'us_offshore_supply',
  'us_documentation',
  'canada_lifesaving',
  'uk_small_commercial',
  'uk_workboat',
  'uk_inland',
  'eu_inland',
  'caribbean_small_commercial',
  'harmonised_survey',
  'radio_licence',
  'offshore_racing',
  'bs5306',
  'nfpa10',
  'insurer',
  'maker',
  'common_practice',
  'own',
  'historic',
] as const;
export type SchemeId = (typeof SCHEME_IDS)[number];

export type Scheme = {
  readonly id: SchemeId;
  readonly name: string;
  readonly weight: Weight;
  /** Applies to every vessel without being chosen: common practice and makers' figures. */
  readonly always: boolean;
  readonly about: string;
};

/** Every scheme, law first. */
export const SCHEMES: readonly Scheme[] = [
  {
    id: 'solas',
    name: 'SOLAS',
    weight: 'law',
    always: false,
    about: 'The Safety of Life at Sea convention with the IMO resolutions and circulars under it.',
  },
  {
    id: 'us_recreational',
    name: 'United States, recreational vessel',
    weight: 'law',
    always: false,
    about: 'Federal carriage rules for recreational vessels (33 CFR 175) and the approval rules behind them.',
  },
  {
    id: 'us_sailing_school',
    name: 'United States, inspected sailing school vessel',
    weight: 'law',
    always: false,
    about: 'Federal rules for inspected sailing school vessels (46 CFR 169).',
  },
  {
    id: 'us_small_passenger',
    name: 'United States, inspected small passenger vessel',
    weight: 'law',
    always: false,
    about: 'Federal rules for inspected small passenger vessels (46 CFR subchapters K and T).',
  },
  {
    id: 'us_offshore_supply',
    name: 'United States, inspected offshore supply vessel',
    weight: 'law',
    always: false,
    about: 'Federal rules for inspected offshore supply vessels (46 CFR subchapter L).',
  },
  {
    id: 'us_documentation',
    name: 'United States, documented vessel',
    weight: 'law',
    always: false,
    about: 'Federal rules on the documentation of vessels (46 CFR 67).',
  },
  {
    id: 'canada_lifesaving',
    name: 'Canada, life saving equipment',
    weight: 'law',
    always: false,
    about: 'The Life Saving Equipment Regulations and the Small Vessel Regulations.',
  },
  {
    id: 'uk_small_commercial',
    name: 'United Kingdom, small commercial vessel',
    weight: 'certificate',
    always: false,
    about: "Codes of practice and marine guidance notes that a small commercial vessel's certificate rests on.",
  },
  {
    id: 'uk_workboat',
    name: 'United Kingdom, workboat or pilot boat',
    weight: 'certificate',
    always: false,
    about: "The regulations that a small workboat's or pilot boat's certificate rests on (SI 2023/1216).",
  },
  {
    id: 'uk_inland',
    name: 'United Kingdom, inland waters',
    weight: 'certificate',
    always: false,
    about: 'The Boat Safety Scheme that navigation authorities ask for inland.',
  },
  {
    id: 'eu_inland',
    name: 'European Union, inland waters',
    weight: 'certificate',
    always: false,
    about: "The technical rules that an inland vessel's certificate rests on (directive 2006/87 and national texts).",
  },
  {
    id: 'caribbean_small_commercial',
    name: 'Caribbean, small commercial vessel',
    weight: 'certificate',
    always: false,
    about: "The small vessel code that a small commercial vessel's certificate of inspection rests on.",
  },
  {
    id: 'harmonised_survey',
    name: 'Harmonised survey',
    weight: 'certificate',
    always: false,
    about: 'The harmonised system of survey and certification, which convention certificates follow.',
  },
  {
    id: 'radio_licence',
    name: 'Ship radio licence',
    weight: 'law',
    always: false,
    about: "The terms of the ship's radio licence and of the registration of her beacon.",
  },
  {
    id: 'offshore_racing',
    name: 'Offshore racing',
    weight: 'certificate',
    always: false,
    about: 'The offshore special regulations that a race organiser asks for.',
  },
  {
    id: 'bs5306',
    name: 'BS 5306-3',
    weight: 'common_practice',
    always: false,
    about: 'A British standard for extinguishers in buildings, used afloat by choice.',
  },
  {
    id: 'nfpa10',
    name: 'NFPA 10',
    weight: 'common_practice',
    always: false,
    about: 'A United States standard for portable extinguishers, followed by choice unless a law takes it up.',
  },
  {
    id: 'insurer',
    name: "The insurer's terms",
    weight: 'insurer',
    always: false,
    about: "What insurers are reported to ask; the vessel's own policy comes first.",
  },
  {
    id: 'maker',
    name: "The maker's instructions",
    weight: 'maker',
    always: true,
    about: 'What makers ask for their own goods.',
  },
  {
    id: 'common_practice',
    name: 'Common practice',
    weight: 'common_practice',
    always: true,
    about: 'What the trade usually does, with or without a source: advice, never law.',
  },
  {
    id: 'own',
    name: "The organisation's own rules",
    weight: 'own',
    always: true,
    about: 'What whoever keeps the fleet has laid down for themselves, or taken over from a book or a letter.',
  },
  {
    id: 'historic',
    name: 'Superseded texts',
    weight: 'common_practice',
    always: false,
    about: 'Rules no longer in force, kept because they show how a missing or passed date was treated.',
  },
];
