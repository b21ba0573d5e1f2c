/** Sailing boats without a galley, of a school or a club. */
import type { VesselTemplate } from '../template.ts';
import { aboard } from './aboard.ts';

export const TRAINING_DINGHY: VesselTemplate = {
  id: 'training_dinghy',
  name: 'Training dinghy',
  forWhom: 'An open dinghy of a sailing school that is launched from a slip and followed by a safety boat.',
  items: [
    aboard('hull', 'Hull and buoyancy'),
    aboard('rudder_bearings', 'Rudder, pintles and gudgeons'),
    aboard('standing_rigging_wire', 'Shrouds and forestay'),
    aboard('running_rigging', 'Halyards and sheets'),
    aboard('foam_lifejacket', 'Lifejackets, foam', { zone: 'store ashore', quantity: 4 }),
  ],
};

export const SMALL_KEELBOAT: VesselTemplate = {
  id: 'small_keelboat',
  name: 'Small keelboat',
  forWhom: 'A day-sailing keelboat of 6–8 m with an outboard engine, without a galley.',
  items: [
    aboard('hull', 'Hull'),
    aboard('antifouling', 'Antifouling'),
    aboard('keel_bolts', 'Keel bolts'),
    aboard('rudder_bearings', 'Rudder bearings and stock'),
    aboard('standing_rigging_wire', 'Standing rigging'),
    aboard('chainplate', 'Chainplates'),
    aboard('running_rigging', 'Halyards, sheets and furling line'),
    aboard('anchor_chain', 'Anchor chain'),
    aboard('engine', 'Outboard engine', { zone: 'cockpit' }),
    aboard('bilge_pump', 'Bilge pump, by hand', { zone: 'cockpit' }),
    aboard('navigation_lights', 'Navigation lights'),
    aboard('battery', 'Battery', { zone: 'saloon' }),
    aboard('portable_extinguisher_dry_powder', 'Extinguisher'),
    aboard('hand_flare', 'Hand flares, red', { quantity: 3 }),
    aboard('inflatable_lifejacket', 'Lifejackets', { quantity: 5 }),
    aboard('throwing_line', 'Throwing line'),
    aboard('first_aid_kit', 'First-aid kit'),
  ],
};
