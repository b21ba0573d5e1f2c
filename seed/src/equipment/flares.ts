/** Pyrotechnics: a month printed on the case, and a new set when it has passed. */
import type { Day } from '@garboard/domain/calendar/day.ts';
import { addDays, addMonths } from '@garboard/domain/calendar/day.ts';
import type { Fortune, Logbook } from '../logbook.ts';
import type { FactPlan, ItemPlan } from '../plan.ts';
import type { Random } from '../random.ts';
import { act, dateText, plate, plateOfNew } from '../record.ts';
import { lotOf, thing } from './thing.ts';

type FlareKind = 'hand_flare' | 'parachute_rocket_flare' | 'buoyant_smoke';

/** Printed to expire three years after they were lot. */
const LIFE_MONTHS = 36;

export function flares(log: Logbook, kind: FlareKind, label: string, quantity: number): ItemPlan {
  const { random, fortune } = lotOf(log, label);
  if (fortune === 'unknown') return thing(kind, label, [], { quantity });
  return thing(kind, label, sets(log, random, expiryOf(log, random, fortune)), { quantity });
}

/** Somewhere in the month that is printed. */
function expiryOf({ today }: Logbook, random: Random, fortune: Fortune): Day {
  switch (fortune) {
    case 'late':
      return addMonths(today, -random.pick([1, 1, 2, 4, 9]));
    case 'soon':
      return addDays(today, random.between(0, 20));
    case 'in_date':
    case 'unknown':
      return addMonths(today, random.between(3, 34));
  }
}

/** The set aboard, and before it every set back to the one that was aboard when the vessel was entered. */
function sets(log: Logbook, random: Random, expiry: Day): FactPlan[] {
  const madeOn = addMonths(expiry, -LIFE_MONTHS);
  const boughtOn = addDays(madeOn, random.between(20, 40));
  const prints = (read: Read) => [
    read('manufactured', dateText(madeOn, 'month')),
    read('printed_expiry', dateText(expiry, 'month')),
  ];
  if (boughtOn <= log.enteredOn) return prints((fact, on) => plate(fact, on, log.enteredOn));
  const replaced = act(log, 'replaced', boughtOn, { doneBy: log.people.keeper });
  const before = sets(log, random, addMonths(boughtOn, random.between(-2, 3)));
  return [...before, replaced, ...prints((fact, on) => plateOfNew(replaced, fact, on))];
}

type Read = (fact: 'manufactured' | 'printed_expiry', on: string) => FactPlan;
