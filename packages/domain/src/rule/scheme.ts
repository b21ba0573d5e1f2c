/** Bodies of rules that a vessel can be kept under, and what stands behind each. */

/** What stands behind an obligation. Advice is never mixed into the count of legal lapses. */
export const WEIGHTS = ['law', 'certificate', 'insurer', 'maker', 'common_practice', 'own'] as const;
export type Weight = (typeof WEIGHTS)[number];

export const SCHEME_IDS = [
  'solas',
  'us_recreational',
  'us_sailing_school',
  'us_small_passenger',
  'canada_lifesaving',
  'uk_small_commercial',
  'offshore_racing',
  'bs5306',
  'nfpa10',
  'insurer',
  'maker',
  'common_practice',
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
