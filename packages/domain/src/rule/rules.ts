/** The published rules, and which of them bear on an item. */
import { ITEM_KIND_IDS, type ItemKindId } from '../item/item-kind.ts';
import { BEACON_DATE_RULES } from './catalogue/beacon-dates.ts';
import { BEACON_RULES } from './catalogue/beacons.ts';
import { CONVENTION_CERTIFICATE_RULES } from './catalogue/convention-certificates.ts';
import { DOCUMENT_RULES } from './catalogue/documents.ts';
import { ELECTRIC_RULES } from './catalogue/electrics.ts';
import { ENGINE_RULES } from './catalogue/engine.ts';
import { ENGINE_HOURS_RULES } from './catalogue/engine-hours.ts';
import { EXTINGUISHER_STANDARD_RULES } from './catalogue/extinguisher-standards.ts';
import { EXTINGUISHER_RULES } from './catalogue/extinguishers.ts';
import { FIRST_AID_RULES } from './catalogue/first-aid.ts';
import { FLARE_RULES } from './catalogue/flares.ts';
import { GAS_RULES } from './catalogue/gas.ts';
import { GAS_INSTALLATION_RULES } from './catalogue/gas-installation.ts';
import { GROUND_TACKLE_RULES } from './catalogue/ground-tackle.ts';
import { HOSE_RULES } from './catalogue/hoses.ts';
import { HULL_RULES } from './catalogue/hull.ts';
import { HYDROSTATIC_RELEASE_RULES } from './catalogue/hydrostatic-release.ts';
import { KEEL_INSPECTION_RULES } from './catalogue/keel-inspection.ts';
import { LIFEJACKET_RULES } from './catalogue/lifejackets.ts';
import { LIFERAFT_RULES } from './catalogue/liferaft.ts';
import { LIFERAFT_TEST_RULES } from './catalogue/liferaft-tests.ts';
import { NAVIGATION_RULES } from './catalogue/navigation.ts';
import { RIGGING_RULES } from './catalogue/rigging.ts';
import { SAFETY_ON_DECK_RULES } from './catalogue/safety-on-deck.ts';
import { SEACOCK_RULES } from './catalogue/seacocks.ts';
import { STEERING_KEEL_SHAFT_RULES } from './catalogue/steering-keel-shaft.ts';
import { UK_CERTIFICATE_RULES } from './catalogue/uk-certificates.ts';
import { US_LIFESAVING_RULES } from './catalogue/us-lifesaving.ts';
import { WHOLE_SCHEME_RULES } from './catalogue/whole-schemes.ts';
import type { Rule } from './rule.ts';
import { SCHEMES, type SchemeId } from './scheme.ts';

export const RULES: readonly Rule[] = [
  ...RIGGING_RULES,
  ...HOSE_RULES,
  ...FLARE_RULES,
  ...LIFERAFT_RULES,
  ...LIFERAFT_TEST_RULES,
  ...EXTINGUISHER_RULES,
  ...EXTINGUISHER_STANDARD_RULES,
  ...BEACON_RULES,
  ...BEACON_DATE_RULES,
  ...HYDROSTATIC_RELEASE_RULES,
  ...LIFEJACKET_RULES,
  ...FIRST_AID_RULES,
  ...GAS_RULES,
  ...GAS_INSTALLATION_RULES,
  ...ENGINE_RULES,
  ...ENGINE_HOURS_RULES,
  ...SEACOCK_RULES,
  ...ELECTRIC_RULES,
  ...STEERING_KEEL_SHAFT_RULES,
  ...KEEL_INSPECTION_RULES,
  ...GROUND_TACKLE_RULES,
  ...NAVIGATION_RULES,
  ...SAFETY_ON_DECK_RULES,
  ...HULL_RULES,
  ...DOCUMENT_RULES,
  ...UK_CERTIFICATE_RULES,
  ...CONVENTION_CERTIFICATE_RULES,
  ...US_LIFESAVING_RULES,
  ...WHOLE_SCHEME_RULES,
];

const BY_ID: ReadonlyMap<string, Rule> = new Map(RULES.map((rule) => [rule.id, rule]));
const BY_KIND: ReadonlyMap<ItemKindId, readonly Rule[]> = new Map(
  ITEM_KIND_IDS.map((kind) => [kind, RULES.filter(({ kinds }) => kinds.includes(kind))]),
);
const ALWAYS: ReadonlySet<SchemeId> = new Set(SCHEMES.filter((scheme) => scheme.always).map((scheme) => scheme.id));

/** The rule of that id; `undefined` when the catalogue has none. */
export function findRule(id: string): Rule | undefined {
  return BY_ID.get(id);
}

const SUSPENDING: readonly Rule[] = RULES.filter(({ suspends }) => suspends !== undefined);

/** The rules under which the schemes' own duties are suspended while the vessel is laid up. */
export function suspendingRules(schemes: readonly SchemeId[]): readonly Rule[] {
  return SUSPENDING.filter(({ scheme }) => schemes.includes(scheme));
}

/** Whether the scheme applies to every vessel without being chosen. */
export function isAlways(scheme: SchemeId): boolean {
  return ALWAYS.has(scheme);
}

/** The rules that the schemes put on a kind, with those of every scheme that always applies; in catalogue order. */
export function rulesFor(kind: ItemKindId, schemes: readonly SchemeId[]): readonly Rule[] {
  return (BY_KIND.get(kind) ?? []).filter(({ scheme }) => isAlways(scheme) || schemes.includes(scheme));
}
