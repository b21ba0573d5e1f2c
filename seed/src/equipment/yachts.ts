/** What a yacht or a motor boat carries, in the order in which a bosun walks round her. */
import type { Logbook } from '../logbook.ts';
import type { ItemPlan } from '../plan.ts';
import { disposable, engineSpaceExtinguisher, extinguisher, fireBlanket } from './extinguishers.ts';
import { flares } from './flares.ts';
import { exhaustHose, fuelHose, gasHose, gasRegulator, seawaterHose } from './hoses.ts';
import { packedContents } from './liferaft.ts';
import { chainplates, rodRigging, wireRigging } from './rigging.ts';

/** Everything but the raft, which is a story of its own aboard each. */
export function cruisingYacht(log: Logbook): ItemPlan[] {
  return [
    wireRigging(log, 'Standing rigging, wire'),
    chainplates(log, 'Chainplates', 144),
    gasRegulator(log, 'Gas regulator, locker'),
    gasHose(log, 'Gas hose, bottle to bulkhead'),
    gasHose(log, 'Gas hose, cooker'),
    fireBlanket(log, 'Fire blanket, galley'),
    extinguisher(log, 'portable_extinguisher_dry_powder', 'Extinguisher 2 kg powder, galley', { zone: 'galley' }),
    extinguisher(log, 'portable_extinguisher_foam', 'Extinguisher 2 l foam, forecabin', { zone: 'forecabin' }),
    ...engineSpace(log),
    ...distressSignals(log),
  ];
}

function engineSpace(log: Logbook): ItemPlan[] {
  return [
    extinguisher(log, 'portable_extinguisher_co2', 'Extinguisher 2 kg CO2, by the engine hatch'),
    fuelHose(log, 'Fuel hose, tank to filter'),
    seawaterHose(log, 'Seawater hose, engine inlet'),
    exhaustHose(log, 'Exhaust hose, silencer to transom'),
    seawaterHose(log, 'Heads hoses, inlet and outlet', 2),
  ];
}

function distressSignals(log: Logbook): ItemPlan[] {
  return [
    flares(log, 'parachute_rocket_flare', 'Parachute rockets, cockpit locker', 4),
    flares(log, 'hand_flare', 'Hand flares, cockpit locker', 6),
    flares(log, 'buoyant_smoke', 'Orange smoke, cockpit locker', 2),
    packedContents(log, 'Raft pack: rations, water, flares'),
  ];
}

export function sailingBoat(log: Logbook): ItemPlan[] {
  return [
    wireRigging(log, 'Standing rigging, wire'),
    chainplates(log, 'Chainplates', 180),
    gasRegulator(log, 'Gas regulator, locker'),
    gasHose(log, 'Gas hose, cooker'),
    fireBlanket(log, 'Fire blanket, galley'),
    fuelHose(log, 'Fuel hose, tank to engine'),
    seawaterHose(log, 'Seawater hose, engine inlet'),
    exhaustHose(log, 'Exhaust hose'),
  ];
}

/** From across the ocean, where the law asks after her signals and her extinguishers. */
export function visitingYacht(log: Logbook): ItemPlan[] {
  return [
    ...sailingBoat(log),
    flares(log, 'hand_flare', 'Hand flares, grab bag', 4),
    flares(log, 'buoyant_smoke', 'Orange smoke, grab bag', 1),
    disposable(log, 'Extinguisher 1 kg powder, companionway'),
  ];
}

export function trainingKetch(log: Logbook): ItemPlan[] {
  return [
    ...sailingBoat(log),
    extinguisher(log, 'portable_extinguisher_dry_powder', 'Extinguisher 6 kg powder, engine room', {
      zone: 'engine space',
    }),
    extinguisher(log, 'portable_extinguisher_foam', 'Extinguisher 6 l foam, fo’c’sle', { zone: 'forecabin' }),
    flares(log, 'parachute_rocket_flare', 'Parachute rockets, wheelhouse', 12),
    flares(log, 'hand_flare', 'Hand flares, wheelhouse', 6),
  ];
}

export function motorBoat(log: Logbook): ItemPlan[] {
  return [
    fuelHose(log, 'Fuel hose, port tank'),
    fuelHose(log, 'Fuel hose, starboard tank'),
    seawaterHose(log, 'Seawater hoses, both engines', 2),
    exhaustHose(log, 'Exhaust hoses, both engines'),
    engineSpaceExtinguisher(log, 'Automatic extinguisher, engine space'),
    gasHose(log, 'Gas hose, cooker'),
  ];
}

/** A racing boat: rod, no gas, flares by the book. */
export function racingBoat(log: Logbook): ItemPlan[] {
  return [
    rodRigging(log, 'Standing rigging, rod'),
    chainplates(log, 'Chainplates and tie-rods', 96),
    fuelHose(log, 'Fuel hose, tank to engine'),
    flares(log, 'hand_flare', 'Hand flares, race pack', 4),
    flares(log, 'buoyant_smoke', 'Orange smoke, race pack', 2),
  ];
}
