/** What is found aboard yachts of the demo fleets. Invented; each stands where such a thing is found. */
import type { Hazard, Trade, Urgency } from '@garboard/domain/finding/codes.ts';

export type Known = {
  readonly zone: string;
  readonly what: string;
  readonly hazard: Hazard;
  readonly urgency: Urgency;
  readonly trade: Trade;
  /** What was done about it, where somebody did. */
  readonly mended: string;
  /** In whole units of the fleet's money; `null` where nobody has said. */
  readonly cost: number | null;
};

const known = (
  zone: string,
  what: string,
  [hazard, urgency, trade]: readonly [Hazard, Urgency, Trade],
  mended: string,
  cost: number | null = null,
): Known => ({ zone, what, hazard, urgency, trade, mended, cost });

export const KNOWN: readonly [Known, ...Known[]] = [
  known(
    'hull_below_water',
    'Blisters along the port bilge, twelve to the square metre',
    ['watertight_integrity', 'next_lay_up', 'boatbuilder'],
    'Opened, dried and filled',
    900,
  ),
  known(
    'keel_and_rudder',
    'Rust weeping from the keel joint, aft third',
    ['watertight_integrity', 'this_season', 'boatbuilder'],
    'Joint raked out and resealed',
    650,
  ),
  known(
    'keel_and_rudder',
    'Rudder knocks in its lower bearing',
    ['steering', 'next_lay_up', 'boatbuilder'],
    'Bearing renewed',
    480,
  ),
  known('stern_gear', 'Shaft anode three quarters gone', ['value', 'within_weeks', 'own_crew'], 'Anode renewed'),
  known(
    'topsides',
    'Rubbing strake loose over a metre, starboard',
    ['value', 'next_lay_up', 'own_crew'],
    'Bedded and screwed',
  ),
  known(
    'deck',
    'Two stanchion bases move under hand',
    ['life', 'this_season', 'boatbuilder'],
    'Bases rebedded on backing plates',
    320,
  ),
  known(
    'deck',
    'Forehatch weeps at its after seal',
    ['watertight_integrity', 'this_season', 'own_crew'],
    'Seal renewed, hosed dry',
  ),
  known(
    'cockpit',
    'Drain of the cockpit runs slowly to port',
    ['watertight_integrity', 'within_weeks', 'own_crew'],
    'Drain rodded through',
  ),
  known(
    'gas_locker',
    'Lid of the gas locker does not seal',
    ['fire_and_gas', 'this_season', 'own_crew'],
    'Seal renewed',
  ),
  known(
    'gas_locker',
    'Gas locker drains into the cockpit locker beside it',
    ['fire_and_gas', 'before_use', 'gas_engineer'],
    'Drain led overboard, tested with water',
    240,
  ),
  known(
    'mast_and_rigging',
    'Broken strand at the swage, port lower',
    ['rig', 'before_use', 'rigger'],
    'Lower renewed with its terminal',
    310,
  ),
  known(
    'mast_and_rigging',
    'Split pins of two bottlescrews missing',
    ['rig', 'within_weeks', 'own_crew'],
    'Pins put in and taped',
  ),
  known(
    'sails',
    'Leech of the mainsail chafed at the second reef',
    ['equipment', 'next_lay_up', 'sailmaker'],
    'Patched and restitched',
    120,
  ),
  known(
    'structure_inside',
    'Bond of the main bulkhead parted at its foot, 200 mm',
    ['watertight_integrity', 'this_season', 'boatbuilder'],
    'Ground back and rebonded',
    780,
  ),
  known(
    'seacocks',
    'Seacock of the heads will not turn',
    ['watertight_integrity', 'within_weeks', 'boatbuilder'],
    'Seacock renewed in bronze',
    260,
  ),
  known(
    'seacocks',
    'Hose of the galley drain has one clip below the waterline',
    ['watertight_integrity', 'this_season', 'own_crew'],
    'Second clip fitted',
  ),
  known(
    'engine',
    'Exhaust elbow corroded at its weld',
    ['fire_and_gas', 'within_weeks', 'marine_engineer'],
    'Elbow renewed',
    390,
  ),
  known(
    'engine',
    'Fuel lift pump weeps',
    ['fire_and_gas', 'before_use', 'marine_engineer'],
    'Pump renewed, run for an hour, dry',
    180,
  ),
  known(
    'steering',
    'Steering wire worn at the quadrant, three strands',
    ['steering', 'before_use', 'rigger'],
    'Wires renewed',
    280,
  ),
  known('electrics', 'Battery box without its strap', ['fire_and_gas', 'within_weeks', 'own_crew'], 'Strap fitted'),
  known(
    'electrics',
    'Shore inlet browned at one pin',
    ['fire_and_gas', 'before_use', 'electrician'],
    'Inlet and plug renewed',
    150,
  ),
  known(
    'gas_installation',
    'Gas hose hardened behind the cooker',
    ['fire_and_gas', 'within_weeks', 'gas_engineer'],
    'Hose renewed and tested',
    95,
  ),
  known(
    'water_and_bilge',
    'Float switch of the bilge pump sticks',
    ['watertight_integrity', 'within_weeks', 'electrician'],
    'Switch renewed and tried',
    60,
  ),
  known('lifesaving', 'Light of one lifebuoy dead', ['life', 'within_weeks', 'own_crew'], 'Battery renewed'),
  known(
    'ground_tackle',
    'Bitter end of the chain made fast with wire alone',
    ['equipment', 'this_season', 'own_crew'],
    'Lashed so that it can be cut',
  ),
  known('navigation', 'Stern light cracked', ['life', 'this_season', 'electrician'], 'Light renewed', 45),
  known('accommodation', 'Teak sole lifting by the companionway', ['value', 'observe', 'boatbuilder'], 'Relaid', 210),
];
