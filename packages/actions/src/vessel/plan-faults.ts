/** A day that a plan or a memory can reasonably name. */
import type { Fault } from '../result.ts';

const EARLIEST = 1900;
/** Nobody plans a vessel's life further ahead than this. House convention, no source. */
const YEARS_AHEAD = 30;

export function planFaults(pointer: string, day: string, now: Date): Fault[] {
  const year = Number(day.slice(0, 4));
  if (year < EARLIEST) return [{ pointer, detail: `lies before ${EARLIEST}` }];
  if (year > now.getUTCFullYear() + YEARS_AHEAD)
    return [{ pointer, detail: `lies more than ${YEARS_AHEAD} years ahead` }];
  return [];
}
