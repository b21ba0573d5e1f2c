/** Yachts that people sleep aboard: an engine, a galley, skin fittings. */
import type { TemplateItem, VesselTemplate } from '../template.ts';
import { aboard } from './aboard.ts';

const HULL_AND_RIG: readonly TemplateItem[] = [
  aboard('hull', 'Hull'),
  aboard('antifouling', 'Antifouling'),
  aboard('hull_anode', 'Hull anode'),
  aboard('keel_bolts', 'Keel bolts'),
  aboard('rudder_bearings', 'Rudder bearings and stock'),
  aboard('steering_gear', 'Steering gear'),
  aboard('steering_compass', 'Steering compass'),
  aboard('standing_rigging_wire', 'Standing rigging'),
  aboard('chainplate', 'Chainplates'),
  aboard('running_rigging', 'Halyards, sheets and furling line'),
  aboard('anchor_chain', 'Anchor chain'),
  aboard('navigation_lights', 'Navigation lights'),
];

const BELOW: readonly TemplateItem[] = [
  aboard('engine', 'Engine'),
  aboard('engine_anode', 'Engine anode'),
  aboard('propeller_shaft', 'Propeller shaft and stern gland'),
  aboard('fuel_hose', 'Fuel hose, tank to engine'),
  aboard('wet_exhaust_hose', 'Exhaust hose'),
  aboard('seacock', 'Seacock, engine cooling'),
  aboard('seacock', 'Seacock, heads inlet', { zone: 'heads' }),
  aboard('seacock', 'Seacock, heads outlet', { zone: 'heads' }),
  aboard('seacock', 'Seacock, galley sink', { zone: 'galley' }),
  aboard('seawater_hose', 'Hose, engine cooling', { zone: 'engine space' }),
  aboard('battery', 'Battery, engine'),
  aboard('battery', 'Battery, domestic'),
  aboard('bilge_pump', 'Bilge pump, electric'),
  aboard('bilge_pump', 'Bilge pump, by hand', { zone: 'cockpit' }),
];

const GALLEY: readonly TemplateItem[] = [
  aboard('gas_hose', 'Gas hose, cylinder to pipe'),
  aboard('gas_hose', 'Gas hose, cooker', { zone: 'galley' }),
  aboard('gas_regulator', 'Gas regulator'),
  aboard('gas_locker_drain', 'Gas locker drain'),
  aboard('gas_installation', 'Gas installation'),
  aboard('gas_detector', 'Gas detector'),
  aboard('carbon_monoxide_alarm', 'Carbon monoxide alarm'),
  aboard('fire_blanket', 'Fire blanket'),
  aboard('portable_extinguisher_dry_powder', 'Extinguisher, saloon'),
  aboard('portable_extinguisher_dry_powder', 'Extinguisher, forepeak', { zone: 'forepeak' }),
  aboard('engine_space_extinguisher', 'Extinguisher, engine space'),
];

const SAFETY: readonly TemplateItem[] = [
  aboard('hand_flare', 'Hand flares, red', { quantity: 4 }),
  aboard('buoyant_smoke', 'Smoke signals, orange', { quantity: 2 }),
  aboard('man_overboard_recovery_gear', 'Man-overboard recovery gear'),
  aboard('throwing_line', 'Throwing line'),
  aboard('danbuoy', 'Danbuoy'),
  aboard('lifebuoy_light', 'Lifebuoy light'),
  aboard('webbing_jackstay', 'Jackstays', { quantity: 2 }),
  aboard('first_aid_kit', 'First-aid kit'),
];

export const COASTAL_CRUISING_YACHT: VesselTemplate = {
  id: 'coastal_cruising_yacht',
  name: 'Cruising yacht, 9–12 m, coastal',
  forWhom: 'A sloop or cutter with an inboard engine, a gas cooker and wire rigging, that stays near the coast.',
  items: [
    ...HULL_AND_RIG,
    ...BELOW,
    ...GALLEY,
    ...SAFETY,
    aboard('inflatable_lifejacket', 'Lifejackets', { quantity: 6 }),
    aboard('safety_harness', 'Harnesses and tethers', { quantity: 4 }),
    aboard('liferaft', 'Liferaft'),
    aboard('insurance_policy', 'Insurance policy'),
  ],
};

export const CHARTER_YACHT: VesselTemplate = {
  id: 'charter_yacht',
  name: 'Charter yacht',
  forWhom:
    'A yacht let out with or without a skipper: as the cruising yacht, with gear for a full crew and her papers.',
  items: [
    ...HULL_AND_RIG,
    ...BELOW,
    aboard('bilge_alarm', 'Bilge alarm'),
    ...GALLEY,
    ...SAFETY,
    aboard('parachute_rocket_flare', 'Parachute rockets, red', { quantity: 4 }),
    aboard('inflatable_lifejacket', 'Lifejackets', { quantity: 10 }),
    aboard('safety_harness', 'Harnesses and tethers', { quantity: 10 }),
    aboard('liferaft', 'Liferaft'),
    aboard('hydrostatic_release_disposable', 'Hydrostatic release, liferaft'),
    aboard('epirb', 'EPIRB'),
    aboard('search_and_rescue_transponder', 'Search and rescue transponder'),
    aboard('small_commercial_certificate', 'Small commercial vessel certificate'),
    aboard('ship_radio_licence', 'Ship radio licence'),
    aboard('insurance_policy', 'Insurance policy'),
  ],
};
