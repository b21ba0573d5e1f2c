/** Places aboard in the order of the route, and what people call them. */
export const zoneWords: Readonly<Record<string, string>> = {
  papers: 'Papers and identity',
  hull_below_water: 'Hull below the waterline',
  keel_and_rudder: 'Keel and rudder',
  stern_gear: 'Propeller, shaft and anodes',
  topsides: 'Topsides and rubbing strake',
  deck: 'Deck, fittings and hatches',
  cockpit: 'Cockpit and drains',
  gas_locker: 'Gas locker',
  mast_and_rigging: 'Mast and rigging',
  sails: 'Sails',
  structure_inside: 'Structure from inside',
  seacocks: 'Seacocks and their hoses',
  engine: 'Engine, fuel and exhaust',
  steering: 'Steering',
  electrics: 'Batteries and electrics',
  gas_installation: 'Gas below deck',
  water_and_bilge: 'Water, sewage and bilge pumps',
  fire_gear: 'Fire gear',
  lifesaving: 'Lifesaving and distress gear',
  ground_tackle: 'Anchors, chain and warps',
  navigation: 'Lights, radio and compass',
  accommodation: 'Cabin',
  trial: 'Trial under way',
};

export const nameOfZone = (zone: string): string => zoneWords[zone] ?? zone.replaceAll('_', ' ');
