/** Extinguishers whose record is odd. */
import { addDays, addMonths } from '@garboard/domain/calendar/day.ts';
import { thing } from '../equipment/thing.ts';
import { rounds } from '../history.ts';
import { chanceOf, type Logbook } from '../logbook.ts';
import type { ItemPlan } from '../plan.ts';
import { act, certified, stamp } from '../record.ts';

/** Serviced year after year, and still too old by a year. */
export function pastWithdrawal(log: Logbook, label: string): ItemPlan {
  const madeOn = addMonths(log.today, -12 * 21);
  const services = rounds({ log, fortune: 'in_date', random: chanceOf(log, 'fire round') }, 12, madeOn, 3);
  const facts = services.map((day) =>
    act(log, 'serviced', day, { ...certified(log.people.fireTechnician, day), test: 'extended_service' }),
  );
  const look = act(log, 'inspected', addDays(log.today, -9), { test: 'visual', doneBy: log.people.keeper });
  return thing('portable_extinguisher_dry_powder', label, [stamp(log, madeOn, 'year'), ...facts, look]);
}

/** Taken out of use; it stays on the list, without obligations. */
export function withdrawn(log: Logbook, label: string): ItemPlan {
  const outOn = addMonths(log.today, -5);
  const servicedOn = addMonths(outOn, -10);
  return thing('portable_extinguisher_co2', label, [
    stamp(log, addMonths(log.today, -132)),
    act(log, 'serviced', servicedOn, certified(log.people.fireTechnician, servicedOn)),
    act(log, 'withdrawn', outOn, { doneBy: log.people.keeper, note: 'Dented below the collar. Taken ashore.' }),
  ]);
}

/** The crew's own service is no service. */
export function servicedByTheCrew(log: Logbook, label: string): ItemPlan {
  const lastOn = addMonths(log.today, -15);
  return thing('portable_extinguisher_dry_powder', label, [
    stamp(log, addMonths(log.today, -50)),
    act(log, 'serviced', lastOn, certified(log.people.fireTechnician, lastOn)),
    act(log, 'serviced', addMonths(log.today, -2), { doneBy: log.people.keeper, note: 'Turned, shaken and wiped.' }),
  ]);
}

/** Moved from one end of the boat to the other; its dates go with it. */
export function moved(log: Logbook, label: string): ItemPlan {
  const servicedOn = log.careOn;
  return thing('portable_extinguisher_foam', label, [
    stamp(log, addMonths(log.today, -40)),
    act(log, 'serviced', servicedOn, certified(log.people.fireTechnician, servicedOn)),
    act(log, 'moved', addDays(servicedOn, 12), { doneBy: log.people.keeper, note: 'From the forepeak to the saloon.' }),
  ]);
}

/** Stamped with the year only: it goes out of use with the twelfth year after that, whatever the month. */
export function outWithTheYear(log: Logbook, label: string): ItemPlan {
  return thing('portable_extinguisher_dry_powder_disposable', label, [
    stamp(log, addMonths(log.today, -12 * 12), 'year'),
  ]);
}
