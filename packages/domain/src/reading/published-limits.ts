/**
 * What publications ask of things that are measured at a named survey point. A reading there is held against it and
 * the publication is said beside it; whether that text binds this vessel is for her scheme and her surveyor to say.
 */
import type { Measure } from '../survey-visit/codes.ts';

export type PublishedLimit = {
  readonly zone: string;
  /** As a survey point is named. */
  readonly point: string;
  readonly measure: Measure;
  /** In the unit of the measure. */
  readonly atLeast: number;
  readonly inWords: string;
  readonly source: {
    readonly publication: string;
    readonly clause: string;
    readonly address: string;
    readonly status: 'read' | 'second_hand' | 'memory';
  };
};

const GAS_ANNEX: PublishedLimit['source'] = {
  publication: 'Annex on liquefied petroleum gas of a small commercial vessel code, based on ISO 10239',
  clause: 'gas locker and its drain',
  address: 'https://www.imorules.com/GUID-7F5B1C78-5970-429E-8910-7B086920D508.html',
  status: 'read',
};
const gasLocker = (point: string, atLeast: number, inWords: string): PublishedLimit => ({
  ...{ zone: 'gas_locker', point, measure: 'length', atLeast, inWords },
  source: GAS_ANNEX,
});

export const PUBLISHED_LIMITS: readonly PublishedLimit[] = [
  gasLocker('drain, inside diameter', 19, 'the drain of a gas locker has an inside diameter of 19 mm or more'),
  gasLocker('drain outlet, above the waterline', 75, 'its outlet lies 75 mm or more above the waterline at rest'),
  gasLocker('drain and vent, from openings', 500, 'drain and vent lie 500 mm or more from any opening into the vessel'),
];

export type HeldAgainst =
  | { readonly kind: 'no_limit' }
  | { readonly kind: 'within' | 'outside'; readonly limit: PublishedLimit };

type Measured = {
  readonly zone: string;
  readonly point: string;
  readonly measure: string;
  /** `null`: not measured, which is a gap and is held against nothing. */
  readonly value: number | null;
};

export function heldAgainst({ zone, point, measure, value }: Measured): HeldAgainst {
  const limit = PUBLISHED_LIMITS.find(
    (each) => each.zone === zone && each.measure === measure && each.point === point.trim().toLowerCase(),
  );
  if (!limit || value === null) return { kind: 'no_limit' };
  return { kind: value >= limit.atLeast ? 'within' : 'outside', limit };
}
