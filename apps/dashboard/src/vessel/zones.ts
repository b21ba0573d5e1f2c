/** Places aboard in survey order: papers first, then keel to masthead, then through the inside. */
const SURVEY_ORDER = [
  'papers and identity',
  'hull below the waterline',
  'hull',
  'keel and rudder',
  'propeller, shaft and anodes',
  'bilge and skin fittings',
  'topsides',
  'topsides and rubbing strake',
  'deck, fittings and hatches',
  'cockpit and drains',
  'gas locker',
  'mast and rigging',
  'sails',
  'structure from inside',
  'seacocks and their hoses',
  'engine, fuel and exhaust',
  'steering',
  'batteries and electrics',
  'gas below deck',
  'water, sewage and bilge pumps',
  'fire gear',
  'lifesaving and distress gear',
  'anchors, chain and warps',
  'lights, radio and compass',
  'cabin',
  'saloon',
  'galley',
  'heads',
  'forepeak',
];

/** One place under several names. */
const SAME_PLACE: Readonly<Record<string, string>> = {
  papers: 'papers and identity',
  'on deck': 'deck, fittings and hatches',
  deck: 'deck, fittings and hatches',
  cockpit: 'cockpit and drains',
  'engine space': 'engine, fuel and exhaust',
};

/** A place as it is told, however it was keyed: `gas_locker` and `Gas locker` are one place. */
function zoneWords(zone: string): string {
  const words = zone.replaceAll('_', ' ').trim().toLowerCase();
  return SAME_PLACE[words] ?? words;
}

/** Things by the place they are in; places that the order does not know come last, by name. */
export function byZone<Thing>(
  things: readonly Thing[],
  zoneOf: (thing: Thing) => string,
): { zone: string; things: Thing[] }[] {
  const groups = Map.groupBy(things, (thing) => zoneWords(zoneOf(thing)));
  return [...groups]
    .map(([zone, inside]) => ({ zone, things: inside }))
    .sort((a, b) => rank(a.zone) - rank(b.zone) || a.zone.localeCompare(b.zone));
}

function rank(zone: string): number {
  const index = SURVEY_ORDER.indexOf(zone);
  return index < 0 ? SURVEY_ORDER.length : index;
}
