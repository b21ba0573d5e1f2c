/** A history of the domain, as it is stored: what the columns are filled from. */
import { formatDay } from '../../calendar/day.ts';
import type { Fact } from '../../item/fact.ts';
import type { ItemHistory } from '../../item/work-out-obligations.ts';
import type { StoredFact, StoredItem } from './fill-columns.ts';

export function asStored({ kind, attributes, facts, overrides = [] }: ItemHistory, vessel: number): StoredItem {
  return { kind, vessel, attributes, overrides, facts: facts.map(storedFact) };
}

function storedFact({ id, fact, on, outcome, test, doneBy, until, readOn, reading, ...fates }: Fact): StoredFact {
  return {
    ...{ id, fact, outcome, on: on.text },
    test: test ?? null,
    capacity: doneBy?.capacity ?? null,
    until: until === undefined ? null : formatDay(until),
    readOn: readOn === undefined ? null : formatDay(readOn),
    hours: reading?.unit === 'hours' ? reading.value : null,
    recordedAt: Date.parse(fates.recordedAt),
    corrects: fates.corrects ?? null,
    retracts: fates.retracts === true,
  };
}
