/** Whoever works out the due dates of stored items: one text (`YYYY-MM-DD`) for each obligation, in the catalogue's order. */
import type { StoredItem } from './stored-items.ts';

export type Contender = {
  readonly name: string;
  /** How many times faster than it the engine is meant to be; absent for the engine itself. */
  readonly goal?: number;
  readonly dueDates: (item: StoredItem) => readonly string[];
};
