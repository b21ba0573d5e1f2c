/** Places aboard in survey order: papers first, then keel to masthead, then through the inside. */
const SURVEY_ORDER = [
  'papers',
  'keel and rudder',
  'hull',
  'bilge and skin fittings',
  'topsides',
  'deck',
  'cockpit',
  'gas locker',
  'mast and rigging',
  'sails',
  'saloon',
  'galley',
  'heads',
  'forepeak',
  'engine space',
];

/** A place as it is told, however it was keyed: `gas_locker` and `Gas locker` are one place. */
function zoneWords(zone: string): string {
  const words = zone.replaceAll('_', ' ').trim().toLowerCase();
  return words === 'on deck' ? 'deck' : words;
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
