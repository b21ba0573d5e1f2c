/** To which of two a printed expiry belongs: what an act renewed, or what came of it. */
import { addMonths } from '../calendar/day.ts';
import type { Fact } from './fact.ts';
import { dayOfFact } from './facts-on-record.ts';

/** House figure, no source: what is renewed runs out about then; what is new runs longer. */
export const NEAR_MONTHS = 6;

/** Read before the act, or shown to run out before it or within half a year after it. */
export function isOfWhatWasRenewed(print: Fact, act: Fact): boolean {
  const day = dayOfFact(act);
  if (print.readOn !== undefined && print.readOn < day) return true;
  return print.on.last <= addMonths(day, NEAR_MONTHS);
}

/** The same where the act begins something new, so that a short life of it is not taken for the old one's. */
export function isOfWhatWasBefore(print: Fact, act: Fact): boolean {
  const day = dayOfFact(act);
  return print.on.last <= day || (print.readOn !== undefined && print.readOn < day);
}
