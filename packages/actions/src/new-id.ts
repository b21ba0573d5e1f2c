/** Identifiers are UUIDv7: they sort by the time they were made, which keeps indexes and lists in order. */
import { v7 } from 'uuid';

export function newId(now: Date): string {
  return v7({ msecs: now.getTime() });
}
