/** What is found aboard yachts of the demo fleets. Invented; each stands where such a thing is found. */
import type { Hazard, Trade, Urgency } from '@garboard/domain/finding/codes.ts';
import type { Scene } from '../pictures/scenes.ts';

export type Known = {
  readonly zone: string;
  readonly what: string;
  readonly hazard: Hazard;
  readonly urgency: Urgency;
  readonly trade: Trade;
  /** What is to be done about it, and how it reads once somebody has. */
  readonly work: string;
  readonly mended: string;
  /** In whole units of the fleet's money; `null` where nobody has said. */
  readonly cost: number | null;
  /** What a photograph of it shows; `null`: nobody took one. */
  readonly scene: Scene | null;
};

const known = (
  zone: string,
  what: string,
  [hazard, urgency, trade]: readonly [Hazard, Urgency, Trade],
  [work, mended]: readonly [string, string],
  cost: number | null = null,
  scene: Scene | null = null,
): Known => ({ zone, what, hazard, urgency, trade, work, mended, cost, scene });

export const KNOWN: readonly [Known, ...Known[]] = [
  known(
    'hull_below_water',
    'Blisters along the port bilge, twelve to the square metre',
    ['watertight_integrity', 'next_lay_up', 'boatbuilder'],
    ['Open, dry and fill them', 'Opened, dried and filled'],
    900,
    'blisters',
  ),
  known(
    'keel_and_rudder',
    'Rust weeping from the keel joint, aft third',
    ['watertight_integrity', 'this_season', 'boatbuilder'],
    ['Rake out and reseal the joint', 'Joint raked out and resealed'],
    650,
  ),
  known(
    'keel_and_rudder',
    'Rudder knocks in its lower bearing',
    ['steering', 'next_lay_up', 'boatbuilder'],
    ['Renew the bearing', 'Bearing renewed'],
    480,
  ),
  known(
    'stern_gear',
    'Shaft anode three quarters gone',
    ['value', 'within_weeks', 'own_crew'],
    ['Renew the anode', 'Anode renewed'],
  ),
  known(
    'topsides',
    'Rubbing strake loose over a metre, starboard',
    ['value', 'next_lay_up', 'own_crew'],
    ['Bed and screw it', 'Bedded and screwed'],
  ),
  known(
    'deck',
    'Two stanchion bases move under hand',
    ['life', 'this_season', 'boatbuilder'],
    ['Rebed the bases on backing plates', 'Bases rebedded on backing plates'],
    320,
  ),
  known(
    'deck',
    'Forehatch weeps at its after seal',
    ['watertight_integrity', 'this_season', 'own_crew'],
    ['Renew the seal and hose it', 'Seal renewed, hosed dry'],
  ),
  known(
    'cockpit',
    'Drain of the cockpit runs slowly to port',
    ['watertight_integrity', 'within_weeks', 'own_crew'],
    ['Rod the drain through', 'Drain rodded through'],
  ),
  known(
    'gas_locker',
    'Lid of the gas locker does not seal',
    ['fire_and_gas', 'this_season', 'own_crew'],
    ['Renew the seal', 'Seal renewed'],
  ),
  known(
    'gas_locker',
    'Gas locker drains into the cockpit locker beside it',
    ['fire_and_gas', 'before_use', 'gas_engineer'],
    ['Lead the drain overboard', 'Drain led overboard, tested with water'],
    240,
  ),
  known(
    'mast_and_rigging',
    'Broken strand at the swage, port lower',
    ['rig', 'before_use', 'rigger'],
    ['Renew the lower with its terminal', 'Lower renewed with its terminal'],
    310,
    'wire',
  ),
  known(
    'mast_and_rigging',
    'Split pins of two bottlescrews missing',
    ['rig', 'within_weeks', 'own_crew'],
    ['Put pins in and tape them', 'Pins put in and taped'],
  ),
  known(
    'sails',
    'Leech of the mainsail chafed at the second reef',
    ['equipment', 'next_lay_up', 'sailmaker'],
    ['Patch and restitch it', 'Patched and restitched'],
    120,
  ),
  known(
    'structure_inside',
    'Bond of the main bulkhead parted at its foot, 200 mm',
    ['watertight_integrity', 'this_season', 'boatbuilder'],
    ['Grind back and rebond it', 'Ground back and rebonded'],
    780,
  ),
  known(
    'seacocks',
    'Seacock of the heads will not turn',
    ['watertight_integrity', 'within_weeks', 'boatbuilder'],
    ['Renew the seacock in bronze', 'Seacock renewed in bronze'],
    260,
    'elbow',
  ),
  known(
    'seacocks',
    'Hose of the galley drain has one clip below the waterline',
    ['watertight_integrity', 'this_season', 'own_crew'],
    ['Fit a second clip', 'Second clip fitted'],
    null,
    'hose',
  ),
  known(
    'engine',
    'Exhaust elbow corroded at its weld',
    ['fire_and_gas', 'within_weeks', 'marine_engineer'],
    ['Renew the elbow', 'Elbow renewed'],
    390,
    'elbow',
  ),
  known(
    'engine',
    'Fuel lift pump weeps',
    ['fire_and_gas', 'before_use', 'marine_engineer'],
    ['Renew the pump', 'Pump renewed, run for an hour, dry'],
    180,
  ),
  known(
    'steering',
    'Steering wire worn at the quadrant, three strands',
    ['steering', 'before_use', 'rigger'],
    ['Renew both wires', 'Wires renewed'],
    280,
    'wire',
  ),
  known(
    'electrics',
    'Battery box without its strap',
    ['fire_and_gas', 'within_weeks', 'own_crew'],
    ['Fit a strap', 'Strap fitted'],
  ),
  known(
    'electrics',
    'Shore inlet browned at one pin',
    ['fire_and_gas', 'before_use', 'electrician'],
    ['Renew inlet and plug', 'Inlet and plug renewed'],
    150,
    'inlet',
  ),
  known(
    'gas_installation',
    'Gas hose hardened behind the cooker',
    ['fire_and_gas', 'within_weeks', 'gas_engineer'],
    ['Renew the hose and test it', 'Hose renewed and tested'],
    95,
    'hose',
  ),
  known(
    'water_and_bilge',
    'Float switch of the bilge pump sticks',
    ['watertight_integrity', 'within_weeks', 'electrician'],
    ['Renew the switch', 'Switch renewed and tried'],
    60,
  ),
  known(
    'lifesaving',
    'Light of one lifebuoy dead',
    ['life', 'within_weeks', 'own_crew'],
    ['Renew its battery', 'Battery renewed'],
  ),
  known(
    'ground_tackle',
    'Bitter end of the chain made fast with wire alone',
    ['equipment', 'this_season', 'own_crew'],
    ['Lash it so that it can be cut', 'Lashed so that it can be cut'],
  ),
  known(
    'navigation',
    'Stern light cracked',
    ['life', 'this_season', 'electrician'],
    ['Renew the light', 'Light renewed'],
    45,
  ),
  known(
    'accommodation',
    'Teak sole lifting by the companionway',
    ['value', 'observe', 'boatbuilder'],
    ['Lay it anew', 'Relaid'],
    210,
  ),
];
