/** Gas, fuel, seawater and exhaust. */
import type { Day } from '@garboard/domain/calendar/day.ts';
import { type Lot, rounds } from '../history.ts';
import { fortuneOf, type Logbook } from '../logbook.ts';
import type { FactPlan, ItemPlan } from '../plan.ts';
import { act } from '../record.ts';
import { fitted } from './fitted.ts';
import { lotOf, thing } from './thing.ts';

const YEARS = 12;

export function gasHose(log: Logbook, label: string): ItemPlan {
  const lot = lotOf(log, label);
  return thing(
    'gas_hose',
    label,
    fitted(lot, { months: 5 * YEARS, by: log.people.gasEngineer, print: 'sometimes' }).facts,
  );
}

export function gasRegulator(log: Logbook, label: string): ItemPlan {
  const lot = lotOf(log, label);
  return thing(
    'gas_regulator',
    label,
    fitted(lot, { months: 10 * YEARS, by: log.people.gasEngineer, print: 'sometimes' }).facts,
  );
}

export function seawaterHose(log: Logbook, label: string, quantity = 1): ItemPlan {
  const lot = lotOf(log, label);
  const { facts } = fitted(lot, { months: 10 * YEARS, by: log.people.engineer });
  return thing('seawater_hose', label, facts, { quantity });
}

/** Its life counts from the print along it. */
export function fuelHose(log: Logbook, label: string): ItemPlan {
  const lot = lotOf(log, label);
  const { facts, since } = fitted(lot, { months: 20 * YEARS, by: log.people.engineer, print: 'usually' });
  return thing('fuel_hose', label, [...facts, ...inspections(lot, since)]);
}

export function exhaustHose(log: Logbook, label: string): ItemPlan {
  const lot = lotOf(log, label);
  const { facts, since } = fitted(lot, { months: 10 * YEARS, by: log.people.engineer });
  return thing('wet_exhaust_hose', label, [...facts, ...inspections(lot, since)]);
}

function inspections(lot: Lot, since: Day): FactPlan[] {
  const { log, random } = lot;
  const fortune = lot.fortune === 'in_date' ? fortuneOf(random, log.luck) : 'in_date';
  if (fortune === 'unknown') return [];
  return rounds({ ...lot, fortune }, 12, since).map((day) =>
    act(log, 'inspected', day, { doneBy: log.people.engineer }),
  );
}
