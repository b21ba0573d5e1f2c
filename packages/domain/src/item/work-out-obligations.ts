/**
 * From facts to obligations. Pure: no clock, no I/O; the same facts give the same answer in any order.
 */
import type { Day } from '../calendar/day.ts';
import type { SchemeId } from '../rule/scheme.ts';
import type { Situation, VesselEvent } from '../vessel/situation.ts';
import type { Fact } from './fact.ts';
import type { ItemKindId } from './item-kind.ts';
import type { Obligation } from './obligation.ts';

export type Attributes = Readonly<Record<string, string | number | boolean>>;

export type ItemHistory = {
  readonly kind: ItemKindId;
  readonly attributes: Attributes;
  readonly facts: readonly Fact[];
};

export type VesselHistory = {
  readonly schemes: readonly SchemeId[];
  readonly situations: readonly Situation[];
  readonly events: readonly VesselEvent[];
};

/** As at the end of which day, and as known at which instant (RFC 3339); both absent: all that is on record. */
export type Cut = { readonly asOf?: Day; readonly knownAt?: string };

/** Every obligation that the vessel's schemes put on the item; none once it is withdrawn. */
export declare function workOutObligations(item: ItemHistory, vessel: VesselHistory, cut?: Cut): readonly Obligation[];
