/**
 * When a number of running hours will have been run, from what the meter read. Between two readings the
 * hours are taken to run evenly; beyond the last, at the average rate of the last year that the readings
 * cover. House convention, no source: an estimate, and said to be one.
 */
import { addDays, addMonths, type Day, daysBetween } from '../calendar/day.ts';
import type { Fact } from './fact.ts';

export type MeterReading = { readonly day: Day; readonly hours: number; readonly factId: string };

export type Rate = { readonly from: MeterReading; readonly to: MeterReading };

export type Projection =
  | { readonly kind: 'reached'; readonly on: Day; readonly rate: Rate }
  | { readonly kind: 'too_few_readings' }
  | { readonly kind: 'hardly_runs'; readonly rate: Rate };

/** The readings since the meter last went back, in order of day; of two on one day the higher. */
export function hourReadings(facts: readonly Fact[]): readonly MeterReading[] {
  const readings: MeterReading[] = [];
  for (const { fact, outcome, on, reading, id } of facts) {
    if (fact === 'meter' && outcome === 'passed' && reading?.unit === 'hours')
      withReading(readings, { day: on.first, hours: reading.value, factId: id });
  }
  return readings;
}

/** Adds the next reading to those before it. */
export function withReading(readings: MeterReading[], next: MeterReading): void {
  const last = readings.at(-1);
  if (last && last.day === next.day) {
    if (next.hours > last.hours) readings[readings.length - 1] = next;
    return;
  }
  if (last && next.hours < last.hours) readings.length = 0;
  readings.push(next);
}

/** The first day on which `hours` more than on `since` will have been run. */
export function projectHours(readings: readonly MeterReading[], since: Day, hours: number): Projection {
  const rate = rateOf(readings);
  if (!rate) return { kind: 'too_few_readings' };
  const target = hoursOn(readings, rate, since) + hours;
  const on = dayOfHours(readings, rate, target);
  return on === null ? { kind: 'hardly_runs', rate } : { kind: 'reached', on, rate };
}

/** Hours a day. */
export function perDay({ from, to }: Rate): number {
  return (to.hours - from.hours) / daysBetween(from.day, to.day);
}

/** The shortest span up to the last reading that covers a year; all of them, where they cover less. */
function rateOf(readings: readonly MeterReading[]): Rate | null {
  const to = readings.at(-1);
  const [first] = readings;
  if (!to || !first || first === to) return null;
  const aYearBack = addMonths(to.day, -12);
  return { from: readings.findLast(({ day }) => day <= aYearBack) ?? first, to };
}

function hoursOn(readings: readonly MeterReading[], rate: Rate, day: Day): number {
  const [before, after] = around(readings, (reading) => reading.day > day);
  if (!before)
    return Math.max(0, (after as MeterReading).hours - perDay(rate) * daysBetween(day, (after as MeterReading).day));
  if (!after) return before.hours + perDay(rate) * daysBetween(before.day, day);
  return before.hours + perDay({ from: before, to: after }) * daysBetween(before.day, day);
}

/** Further ahead than that is no date to go by. */
const FURTHEST_DAYS = 50 * 366;

function dayOfHours(readings: readonly MeterReading[], rate: Rate, target: number): Day | null {
  const [before, after] = around(readings, (reading) => reading.hours >= target);
  const start = before ?? (after as MeterReading);
  const slope = before && after ? perDay({ from: before, to: after }) : perDay(rate);
  const days = Math.floor((target - start.hours) / slope);
  return slope > 0 && days <= FURTHEST_DAYS ? addDays(start.day, days) : null;
}

/** The last reading of which it does not hold yet, and the first of which it does. */
function around(
  readings: readonly MeterReading[],
  holds: (reading: MeterReading) => boolean,
): [MeterReading | undefined, MeterReading | undefined] {
  const at = readings.findIndex(holds);
  return at < 0 ? [readings.at(-1), undefined] : [readings[at - 1], readings[at]];
}
