/** Items as PostgreSQL delivers their rows, dates as text: seeded, so that every run works on the same ones. */
import { addDays, type Day, dayOf, formatDay } from '@garboard/domain/calendar/day.ts';
import type { Capacity, FactKind, Outcome, TestKind } from '@garboard/domain/item/fact.ts';
import type { ItemKindId } from '@garboard/domain/item/item-kind.ts';
import type { VesselHistory } from '@garboard/domain/item/work-out-obligations.ts';

/** The columns of a fact that the rules read, those left out that no item here has. */
export type StoredFactRow = {
  readonly id: string;
  readonly fact: FactKind;
  readonly on_text: string;
  readonly outcome: Outcome;
  readonly test: TestKind | null;
  readonly done_by: { readonly capacity: Capacity } | null;
  readonly recorded_at: Date;
  readonly corrects: string | null;
};
export type StoredItem = { readonly kind: BenchKind; readonly facts: readonly StoredFactRow[] };

export const VESSEL: VesselHistory = { schemes: ['solas', 'insurer'], situations: [], events: [] };

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
const RECORDED = Date.UTC(2026, 0, 1);

export function storedItems(count: number): readonly StoredItem[] {
  const random = seeded(20_261_125);
  return Array.from({ length: count }, (_, at) => itemOf(BENCH_KINDS[at % BENCH_KINDS.length] as BenchKind, random));
}

function itemOf(kind: BenchKind, random: () => number): StoredItem {
  return { kind, facts: saidOf(kind, random).map(toRow) };
}

type Said = { readonly fact: FactKind; readonly on: string; readonly by?: Capacity };

function toRow({ fact, on, by }: Said, at: number): StoredFactRow {
  return {
    ...{
      id: `0197a000-0000-7000-8000-00000000000${at}`,
      fact,
      on_text: on,
      outcome: 'passed',
      test: null,
      corrects: null,
    },
    done_by: by === undefined ? null : { capacity: by },
    recorded_at: new Date(RECORDED),
  };
}

/** A day, most often; the month alone for every third date of a plate, as plates have it. */
function saidOf(kind: BenchKind, random: () => number): readonly Said[] {
  const made = addDays(FIRST, Math.floor(random() * SPAN_DAYS));
  const after = (days: number): Day => addDays(made, Math.floor(random() * days));
  const plate = (day: Day) => formatDay(day).slice(0, random() < 1 / 3 ? 7 : 10);
  const fitted = formatDay(after(400));
  switch (kind) {
    case 'gas_hose':
      return [
        { fact: 'manufactured', on: plate(made) },
        { fact: 'installed', on: fitted },
        { fact: 'printed_expiry', on: plate(addDays(made, 1500 + Math.floor(random() * 700))) },
      ];
    case 'hand_flare':
      return [{ fact: 'printed_expiry', on: plate(made) }];
    case 'standing_rigging_wire':
      return [
        { fact: 'installed', on: fitted },
        { fact: 'inspected', on: formatDay(addDays(made, 500 + Math.floor(random() * 900))), by: 'rigger' },
        { fact: 'inspected', on: formatDay(addDays(made, 500 + Math.floor(random() * 900))), by: 'crew' },
      ];
    case 'liferaft':
      return serviced(made, plate(made), 'liferaft_service_station', random);
    case 'portable_extinguisher_dry_powder':
      return serviced(made, plate(made), 'fire_equipment_technician', random);
  }
}

function serviced(made: Day, plate: string, by: Capacity, random: () => number): readonly Said[] {
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
