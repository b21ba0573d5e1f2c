/** Identifiers are UUIDv7: they sort by the time they were made, which keeps indexes and lists in order. */
import { v7 } from 'uuid';

/** Breaks ties within one millisecond, so that what was written first also sorts first. */
let sequence = 0;

export function newId(now: Date): string {
  sequence = (sequence + 1) >>> 0;
  return v7({ msecs: now.getTime(), seq: sequence });
}
