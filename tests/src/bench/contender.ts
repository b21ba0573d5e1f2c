/** Whoever works out the due dates of stored items and hands each over as text (`YYYY-MM-DD`), in the catalogue's order. */
import type { StoredItem } from './stored-items.ts';

export type Take = (date: string) => void;

export type Contender = {
  readonly name: string;
  /** How many times slower than the compiled rules it is meant to be; absent where nothing is promised. */
  readonly goal?: number;
  /** Where it works on something else than the rows as they are stored, that is laid out here, off the clock. */
  readonly before?: (items: readonly StoredItem[]) => void;
  readonly work: (items: readonly StoredItem[], take: Take) => void;
  /** Where it does not end in text, its dates are handed over here, off the clock. */
  readonly after?: (take: Take) => void;
};
