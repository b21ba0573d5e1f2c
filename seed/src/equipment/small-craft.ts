/** What a small boat carries, in the order in which a bosun walks round her. */
import type { Logbook } from '../logbook.ts';
import type { ItemPlan } from '../plan.ts';
import { disposable } from './extinguishers.ts';
import { flares } from './flares.ts';
import { fuelHose, gasHose, gasRegulator } from './hoses.ts';
import { chainplates, wireRigging } from './rigging.ts';

export function dinghy(log: Logbook): ItemPlan[] {
  return [wireRigging(log, 'Shrouds and forestay', { lifeMonths: 60, rigger: false })];
}

export function trapezeDinghy(log: Logbook): ItemPlan[] {
  return [...dinghy(log), wireRigging(log, 'Trapeze wires', { lifeMonths: 36, rigger: false })];
}

export function keelboat(log: Logbook): ItemPlan[] {
  return [
    wireRigging(log, 'Standing rigging', { lifeMonths: 96 }),
    chainplates(log, 'Chainplates', 144),
    flares(log, 'hand_flare', 'Hand flares, grab bag', 2),
  ];
}

export function safetyBoat(log: Logbook): ItemPlan[] {
  return [
    fuelHose(log, 'Fuel hose, tank to outboard'),
    flares(log, 'hand_flare', 'Hand flares, console', 4),
    flares(log, 'buoyant_smoke', 'Orange smoke, console', 2),
  ];
}

export function openBoat(log: Logbook): ItemPlan[] {
  return [fuelHose(log, 'Fuel hose, tank to engine'), disposable(log, 'Extinguisher 1 kg powder, under the thwart')];
}

export function smallSailingBoat(log: Logbook): ItemPlan[] {
  return [
    wireRigging(log, 'Standing rigging, wire', { rigger: false }),
    gasHose(log, 'Gas hose, cooker'),
    gasRegulator(log, 'Gas regulator, cockpit locker'),
  ];
}
