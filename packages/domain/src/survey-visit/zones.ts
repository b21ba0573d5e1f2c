/**
 * The places aboard in the order in which a surveyor walks them: papers first, keel to masthead, then inside from
 * the structure to the cabin. Common practice, no source; an organisation walks its own route where it has one.
 */

/** `boats`: which sorts of craft have such a place. */
export type Zone = { readonly zone: string; readonly name: string; readonly boats: readonly Craft[] };

export const CRAFT = ['sailing_yacht', 'motor_boat', 'open_boat'] as const;
export type Craft = (typeof CRAFT)[number];

const ALL = CRAFT;
const CABIN = ['sailing_yacht', 'motor_boat'] as const;
const SAIL = ['sailing_yacht', 'open_boat'] as const;

export const ZONES: readonly Zone[] = [
  { zone: 'papers', name: 'Papers and identity', boats: ALL },
  { zone: 'hull_below_water', name: 'Hull below the waterline', boats: ALL },
  { zone: 'keel_and_rudder', name: 'Keel and rudder', boats: ALL },
  { zone: 'stern_gear', name: 'Propeller, shaft and anodes', boats: CABIN },
  { zone: 'topsides', name: 'Topsides and rubbing strake', boats: ALL },
  { zone: 'deck', name: 'Deck, fittings and hatches', boats: ALL },
  { zone: 'cockpit', name: 'Cockpit and drains', boats: ALL },
  { zone: 'gas_locker', name: 'Gas locker', boats: CABIN },
  { zone: 'mast_and_rigging', name: 'Mast and rigging', boats: SAIL },
  { zone: 'sails', name: 'Sails', boats: SAIL },
  { zone: 'structure_inside', name: 'Structure from inside', boats: ALL },
  { zone: 'seacocks', name: 'Seacocks and their hoses', boats: CABIN },
  { zone: 'engine', name: 'Engine, fuel and exhaust', boats: ALL },
  { zone: 'steering', name: 'Steering', boats: ALL },
  { zone: 'electrics', name: 'Batteries and electrics', boats: ALL },
  { zone: 'gas_installation', name: 'Gas below deck', boats: CABIN },
  { zone: 'water_and_bilge', name: 'Water, sewage and bilge pumps', boats: ALL },
  { zone: 'fire_gear', name: 'Fire gear', boats: CABIN },
  { zone: 'lifesaving', name: 'Lifesaving and distress gear', boats: ALL },
  { zone: 'ground_tackle', name: 'Anchors, chain and warps', boats: ALL },
  { zone: 'navigation', name: 'Lights, radio and compass', boats: ALL },
  { zone: 'accommodation', name: 'Cabin', boats: CABIN },
  { zone: 'trial', name: 'Trial under way', boats: CABIN },
];

const NAMES = new Set(ZONES.map(({ zone }) => zone));

/** Whether a route of ours has it. */
export const isKnownZone = (zone: string): boolean => NAMES.has(zone);

/** The house route of that sort of craft. */
export const routeOf = (craft: Craft): readonly Zone[] => ZONES.filter(({ boats }) => boats.includes(craft));
