/** Liferafts and what is packed in them: serviced at a station, by certificate. */
import type { Day } from '@garboard/domain/calendar/day.ts';
import { addMonths } from '@garboard/domain/calendar/day.ts';
import { rounds } from '../history.ts';
import { type Logbook, learnedFrom } from '../logbook.ts';
import type { FactPlan, ItemPlan } from '../plan.ts';
import { act, certified, dateText, plate, stamp } from '../record.ts';
import { lotOf, thing } from './thing.ts';

type Raft = {
  readonly standard: 'solas' | 'iso_9650';
  /** The maker's own interval, where it is known. */
  readonly everyMonths?: number;
  readonly ageMonths?: number;
};

export function liferaft(log: Logbook, label: string, { standard, everyMonths, ageMonths }: Raft): ItemPlan {
  const lot = lotOf(log, label);
  const madeOn = addMonths(log.today, -(ageMonths ?? lot.random.between(40, 105)));
  const days = lot.fortune === 'unknown' ? [] : rounds(lot, everyMonths ?? 12, madeOn, 3);
  const attributes = { standard, ...(everyMonths ? { makerIntervalMonths: everyMonths } : {}) };
  const serialNumber = `R${lot.random.between(100_000, 999_999)}`;
  return thing('liferaft', label, [stamp(log, madeOn), ...services(log, days, madeOn)], { attributes, serialNumber });
}

/** By certificate; pressed every year from the tenth on, and inflated before every fifth year is up. */
export function services(log: Logbook, days: readonly Day[], madeOn: Day): FactPlan[] {
  const last = days.at(-1);
  return [
    ...days.flatMap((day) => [act(log, 'serviced', day, paper(log, day)), ...pressed(log, day, madeOn)]),
    ...(last === undefined ? [] : inflated(log, last, madeOn)),
  ];
}

function pressed(log: Logbook, day: Day, madeOn: Day): FactPlan[] {
  if (yearsBetween(madeOn, day) < 9) return [];
  return [act(log, 'tested', day, { ...paper(log, day), test: 'necessary_additional_pressure' })];
}

/** At the last service that a fifth year would otherwise have run out after. */
function inflated(log: Logbook, last: Day, madeOn: Day): FactPlan[] {
  const age = yearsBetween(madeOn, last);
  if (age < 4) return [];
  const on = addMonths(last, -12 * ((age - 4) % 5));
  return [act(log, 'tested', on, { ...paper(log, on), test: 'gas_inflation' })];
}

const paper = (log: Logbook, day: Day) => certified(log.people.raftStation, day);
const yearsBetween = (from: Day, to: Day) => Math.floor((to - from) / 365.25);

/** Printed on the list that comes with the certificate. */
export function packedContents(log: Logbook, label: string): ItemPlan {
  const { random, fortune } = lotOf(log, label);
  const ahead = { late: -2, soon: 0, in_date: random.between(5, 30), unknown: 0 }[fortune];
  const expiry = dateText(addMonths(log.today, ahead), 'month');
  const facts = fortune === 'unknown' ? [] : [plate('printed_expiry', expiry, learnedFrom(log, log.careOn))];
  return thing('liferaft_packed_contents', label, facts);
}
