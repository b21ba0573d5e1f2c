/** Where work on a thing can hurt somebody: what must be heeded, and who it is for. Local law and the maker come first. */
import type { components } from '@garboard/client/generated/api.d.ts';

type ItemKind = components['schemas']['ItemKind'];

const FIRST = 'Flag state, local law and the maker’s instructions come first.';

const GAS =
  'Gas is for a licensed gas engineer. Where gas is suspected: no flame, no switches; shut the cylinder, ventilate, use a detector.';

const OF_CLASS: Record<ItemKind['itemClass'], string | undefined> = {
  rigging:
    'A rig is for a rigger. Nobody goes aloft on gear that is itself in question, or slackens a rig that stands.',
  liferaft:
    'A liferaft is opened, inflated and packed only by an approved service station. Its cylinder can hurt whoever lets it go.',
  extinguishers: 'It is under pressure: opened, refilled and tested only by a competent fire technician.',
  flares:
    'Flares burn and explode. Those out of date go to whoever may take them by local law; they are not fired to be rid of them.',
  hoses: undefined,
  seacocks:
    'A seacock that breaks off or comes apart lets the sea in. It is for a yard or surveyor, with the boat out of the water.',
  gas: GAS,
  lifejackets:
    'A lifejacket is serviced by its maker or a station that its maker accredits. Its cylinder can hurt whoever lets it go.',
  beacons:
    'A beacon is tested only as its maker says: a live one calls out search and rescue. Its battery is for the maker’s agent.',
  hydrostatic_release: 'A release that is fitted or lashed wrongly holds the raft or beacon under.',
  engine:
    'Engines are for a competent marine engineer: stopped, cold and isolated from their batteries before a hand goes near.',
  electrics:
    'Electrics are for a competent electrician. A battery can burn, explode and give off gas: isolate and ventilate first.',
  steering_keel_shaft:
    'Keel, rudder, shaft and steering are for a yard, surveyor or marine engineer. A boat ashore is for the yard: nobody works under her on slack shores.',
  ground_tackle: 'Chain under load and a windlass take fingers. Hands and feet keep clear.',
  navigation: undefined,
  safety_on_deck: 'It carries a life. What is damaged, or has taken a fall, is not used again.',
  first_aid: undefined,
  hull: 'A boat ashore is for the yard: where a shore is slack, keep clear and call the foreman.',
  documents: undefined,
};

const OF_KIND: Record<string, string> = {
  gas_hose: GAS,
  gas_regulator: GAS,
  fuel_hose:
    'Fuel is for a competent marine engineer. Its vapour lies in a bilge and explodes: ventilate before any switch is touched.',
  fixed_co2_system:
    'Carbon dioxide kills in a closed space. Nobody is in it, or goes into it, while a fixed system is worked on; that is for a competent fire technician.',
};

export function cautionFor({ id, itemClass }: Pick<ItemKind, 'id' | 'itemClass'>): string | null {
  const caution = OF_KIND[id] ?? OF_CLASS[itemClass];
  return caution ? `${caution} ${FIRST}` : null;
}

type Hazard = components['schemas']['HazardCode'];

/** What must be heeded by whoever goes to look or to mend. */
const OF_HAZARD: Record<Hazard, string | undefined> = {
  life: OF_CLASS.safety_on_deck,
  watertight_integrity: OF_CLASS.seacocks,
  fire_and_gas: GAS,
  rig: OF_CLASS.rigging,
  steering: OF_CLASS.steering_keel_shaft,
  propulsion: OF_CLASS.engine,
  equipment: undefined,
  value: undefined,
};

/** Some places have a caution of their own, whatever it threatens. */
const OF_ZONE: Readonly<Record<string, string | undefined>> = {
  electrics: OF_CLASS.electrics,
  engine: OF_CLASS.engine,
  gas_locker: GAS,
  gas_installation: GAS,
  mast_and_rigging: OF_CLASS.rigging,
  lifesaving: OF_CLASS.liferaft,
};

export function cautionForFinding({ hazard, zone }: { hazard: Hazard; zone: string }): string | null {
  const caution = OF_ZONE[zone] ?? OF_HAZARD[hazard];
  return caution ? `${caution} ${FIRST}` : null;
}
