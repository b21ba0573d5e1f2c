/** Boats without a rig. */
import type { VesselTemplate } from '../template.ts';
import { aboard } from './aboard.ts';

export const SAFETY_BOAT: VesselTemplate = {
  id: 'safety_boat',
  name: 'Safety boat',
  forWhom: 'A rigid inflatable or open launch with an outboard engine that looks after dinghies.',
  items: [
    aboard('hull', 'Hull and tubes'),
    aboard('engine', 'Outboard engine', { zone: 'cockpit' }),
    aboard('fuel_hose', 'Fuel hose, tank to engine', { zone: 'cockpit' }),
    aboard('battery', 'Battery', { zone: 'cockpit' }),
    aboard('steering_cable', 'Steering cable'),
    aboard('bilge_pump', 'Bilge pump'),
    aboard('navigation_lights', 'Navigation lights'),
    aboard('portable_extinguisher_dry_powder', 'Extinguisher', { zone: 'cockpit' }),
    aboard('hand_flare', 'Hand flares, red', { quantity: 2 }),
    aboard('buoyant_smoke', 'Smoke signals, orange', { quantity: 2 }),
    aboard('inflatable_lifejacket', 'Lifejackets, crew', { zone: 'store ashore', quantity: 2 }),
    aboard('throwing_line', 'Throwing line'),
    aboard('first_aid_kit', 'First-aid kit', { zone: 'cockpit' }),
  ],
};

export const INLAND_MOTOR_CRUISER: VesselTemplate = {
  id: 'inland_motor_cruiser',
  name: 'Motor cruiser, inland waters',
  forWhom: 'A motor boat with a cabin, a gas cooker and an inboard engine, on rivers and canals.',
  items: [
    aboard('hull', 'Hull'),
    aboard('antifouling', 'Antifouling'),
    aboard('hull_anode', 'Hull anode'),
    aboard('engine', 'Engine'),
    aboard('propeller_shaft', 'Propeller shaft and stern gland'),
    aboard('steering_cable', 'Steering cable'),
    aboard('fuel_hose', 'Fuel hose, tank to engine'),
    aboard('wet_exhaust_hose', 'Exhaust hose'),
    aboard('seacock', 'Seacock, engine cooling'),
    aboard('battery', 'Battery, engine'),
    aboard('battery', 'Battery, domestic'),
    aboard('bilge_pump', 'Bilge pump, electric'),
    aboard('gas_hose', 'Gas hose, cylinder to pipe'),
    aboard('gas_hose', 'Gas hose, cooker', { zone: 'galley' }),
    aboard('gas_regulator', 'Gas regulator'),
    aboard('gas_locker_drain', 'Gas locker drain'),
    aboard('gas_installation', 'Gas installation'),
    aboard('carbon_monoxide_alarm', 'Carbon monoxide alarm'),
    aboard('fire_blanket', 'Fire blanket'),
    aboard('portable_extinguisher_dry_powder', 'Extinguisher, cabin'),
    aboard('portable_extinguisher_dry_powder', 'Extinguisher, engine space', { zone: 'engine space' }),
    aboard('inflatable_lifejacket', 'Lifejackets', { quantity: 4 }),
    aboard('inland_boat_certificate', 'Boat safety certificate'),
    aboard('insurance_policy', 'Insurance policy'),
  ],
};
