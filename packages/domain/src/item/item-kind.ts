/** The catalogue of things aboard that have a life, a printed expiry or a service interval. */
import type { AttributeId } from './attribute.ts';
import type { FactKind } from './fact.ts';
import { BEACON_KINDS } from './kinds/beacons.ts';
import { CERTIFICATE_KINDS } from './kinds/certificates.ts';
import { DOCUMENT_KINDS } from './kinds/documents.ts';
import { ELECTRIC_KINDS } from './kinds/electrics.ts';
import { ENGINE_KINDS } from './kinds/engine.ts';
import { EXTINGUISHER_KINDS } from './kinds/extinguishers.ts';
import { FIRST_AID_KINDS } from './kinds/first-aid.ts';
import { FLARE_KINDS } from './kinds/flares.ts';
import { GAS_KINDS } from './kinds/gas.ts';
import { GROUND_TACKLE_KINDS } from './kinds/ground-tackle.ts';
import { HOSE_KINDS } from './kinds/hoses.ts';
import { HULL_KINDS } from './kinds/hull.ts';
import { HYDROSTATIC_RELEASE_KINDS } from './kinds/hydrostatic-release.ts';
import { LIFEJACKET_KINDS } from './kinds/lifejackets.ts';
import { LIFERAFT_KINDS } from './kinds/liferaft.ts';
import { NAVIGATION_KINDS } from './kinds/navigation.ts';
import { RIGGING_KINDS } from './kinds/rigging.ts';
import { SAFETY_ON_DECK_KINDS } from './kinds/safety-on-deck.ts';
import { SEACOCK_KINDS } from './kinds/seacocks.ts';
import { STEERING_KEEL_SHAFT_KINDS } from './kinds/steering-keel-shaft.ts';
import { SURVIVAL_EQUIPMENT_KINDS } from './kinds/survival-equipment.ts';

export const ITEM_KIND_IDS = [
  'standing_rigging_wire',
  'standing_rigging_rod',
  'chainplate',
  'gas_hose',
  'gas_regulator',
  'fuel_hose',
  'seawater_hose',
  'wet_exhaust_hose',
  'hand_flare',
  'parachute_rocket_flare',
  'buoyant_smoke',
  'electronic_visual_distress_signal',
  'liferaft',
  'liferaft_packed_contents',
  'portable_extinguisher_dry_powder',
  'portable_extinguisher_dry_powder_disposable',
  'portable_extinguisher_co2',
  'portable_extinguisher_foam',
  'portable_extinguisher_water',
  'portable_extinguisher_wet_chemical',
  'engine_space_extinguisher',
  'fixed_co2_system',
  'fire_blanket',
  'epirb',
  'search_and_rescue_transponder',
  'personal_locator_beacon',
  'hydrostatic_release_serviceable',
  'hydrostatic_release_disposable',
  'inflatable_lifejacket',
  'foam_lifejacket',
  'lifejacket_firing_head',
  'lifejacket_gas_cylinder',
  'first_aid_kit',
  'gas_detector',
  'carbon_monoxide_alarm',
  'gas_locker_drain',
  'engine_anode',
  'saildrive_seal',
  'seacock',
  'battery',
  'bilge_pump',
  'bilge_alarm',
  'navigation_lights',
  'steering_gear',
  'steering_cable',
  'keel_bolts',
  'rudder_bearings',
  'propeller_shaft',
  'shaft_seal',
  'anchor_chain',
  'steering_compass',
  'man_overboard_recovery_gear',
  'throwing_line',
  'danbuoy',
  'lifebuoy_light',
  'webbing_jackstay',
  'safety_harness',
  'hull',
  'antifouling',
  'hull_anode',
  'insurance_policy',
  'certificate_of_documentation',
  'small_commercial_certificate',
  'rescue_boat',
  'launching_appliance',
  'survival_equipment_battery',
  'running_rigging',
  'workboat_certificate',
  'convention_certificate',
  'certificate_of_inspection',
  'inland_boat_certificate',
  'ship_radio_licence',
  'tonnage_certificate',
  'keel_and_rudder',
  'gas_installation',
  'engine',
] as const;
export type ItemKindId = (typeof ITEM_KIND_IDS)[number];

export const ITEM_CLASSES = [
  'rigging',
  'hoses',
  'flares',
  'liferaft',
  'extinguishers',
  'seacocks',
  'gas',
  'lifejackets',
  'beacons',
  'hydrostatic_release',
  'engine',
  'electrics',
  'steering_keel_shaft',
  'ground_tackle',
  'navigation',
  'safety_on_deck',
  'first_aid',
  'hull',
  'documents',
] as const;
export type ItemClass = (typeof ITEM_CLASSES)[number];

export type ItemKind = {
  readonly id: ItemKindId;
  readonly itemClass: ItemClass;
  /** Its name in the trade's words, in lower case: "gas (LPG) hose". */
  readonly name: string;
  /** Where it usually is, as a suggestion when an item is entered. */
  readonly zone: string;
  /** The facts that such a thing usually has, and where each date is usually found. */
  readonly dates: { readonly [Fact in FactKind]?: string };
  readonly attributes: readonly AttributeId[];
};

/** Every kind, in survey order within its class. */
export const ITEM_KINDS: readonly ItemKind[] = [
  ...RIGGING_KINDS,
  ...HOSE_KINDS,
  ...FLARE_KINDS,
  ...LIFERAFT_KINDS,
  ...EXTINGUISHER_KINDS,
  ...BEACON_KINDS,
  ...HYDROSTATIC_RELEASE_KINDS,
  ...LIFEJACKET_KINDS,
  ...FIRST_AID_KINDS,
  ...GAS_KINDS,
  ...ENGINE_KINDS,
  ...SEACOCK_KINDS,
  ...ELECTRIC_KINDS,
  ...STEERING_KEEL_SHAFT_KINDS,
  ...GROUND_TACKLE_KINDS,
  ...NAVIGATION_KINDS,
  ...SAFETY_ON_DECK_KINDS,
  ...HULL_KINDS,
  ...DOCUMENT_KINDS,
  ...CERTIFICATE_KINDS,
  ...SURVIVAL_EQUIPMENT_KINDS,
];

const BY_ID: ReadonlyMap<string, ItemKind> = new Map(ITEM_KINDS.map((kind) => [kind.id, kind]));

/** The kind of that id; `undefined` when the catalogue has none. */
export function findItemKind(id: string): ItemKind | undefined {
  return BY_ID.get(id);
}
