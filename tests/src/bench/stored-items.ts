/** Items as they lie in the database, dates as text: seeded, so that every run works on the same ones. */
import { addDays, type Day, dayOf, formatDay } from '@garboard/domain/calendar/day.ts';
import type { Capacity, FactKind } from '@garboard/domain/item/fact.ts';
import type { ItemKindId } from '@garboard/domain/item/item-kind.ts';

export type StoredFact = { readonly fact: FactKind; readonly on: string; readonly by?: Capacity };
export type StoredItem = { readonly kind: BenchKind; readonly facts: readonly StoredFact[] };

export const BENCH_KINDS = [
  'gas_hose',
  'hand_flare',
  'standing_rigging_wire',
  'liferaft',
  'portable_extinguisher_dry_powder',
] as const satisfies readonly ItemKindId[];
export type BenchKind = (typeof BENCH_KINDS)[number];

const FIRST = dayOf(2008, 1, 1);
const SPAN_DAYS = 6000;

export function storedItems(count: number): readonly StoredItem[] {
  const random = seeded(20_261_125);
  return Array.from({ length: count }, (_, at) => itemOf(BENCH_KINDS[at % BENCH_KINDS.length] as BenchKind, random));
}

/** A day, most often; the month alone for every third date of a plate, as plates have it. */
function itemOf(kind: BenchKind, random: () => number): StoredItem {
  const made = addDays(FIRST, Math.floor(random() * SPAN_DAYS));
  const after = (days: number): Day => addDays(made, Math.floor(random() * days));
  const plate = (day: Day) => formatDay(day).slice(0, random() < 1 / 3 ? 7 : 10);
  const fitted = formatDay(after(400));
  switch (kind) {
    case 'gas_hose':
      return {
        kind,
        facts: [
          { fact: 'manufactured', on: plate(made) },
          { fact: 'installed', on: fitted },
          { fact: 'printed_expiry', on: plate(addDays(made, 1500 + Math.floor(random() * 700))) },
        ],
      };
    case 'hand_flare':
      return { kind, facts: [{ fact: 'printed_expiry', on: plate(made) }] };
    case 'standing_rigging_wire':
      return {
        kind,
        facts: [
          { fact: 'installed', on: fitted },
          { fact: 'inspected', on: formatDay(addDays(made, 500 + Math.floor(random() * 900))), by: 'rigger' },
          { fact: 'inspected', on: formatDay(addDays(made, 500 + Math.floor(random() * 900))), by: 'crew' },
        ],
      };
    case 'liferaft':
      return { kind, facts: serviced(made, plate(made), 'liferaft_service_station', random) };
    case 'portable_extinguisher_dry_powder':
      return { kind, facts: serviced(made, plate(made), 'fire_equipment_technician', random) };
  }
}

function serviced(made: Day, plate: string, by: Capacity, random: () => number): readonly StoredFact[] {
  const first = addDays(made, 40 + Math.floor(random() * 700));
  const second = addDays(first, 300 + Math.floor(random() * 100));
  return [
    { fact: 'manufactured', on: plate },
    { fact: 'serviced', on: formatDay(first), by },
    { fact: 'serviced', on: formatDay(second), by },
  ];
}

/** A small generator of our own, good enough to vary dates. */
function seeded(seed: number): () => number {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 2 ** 32;
  };
}
