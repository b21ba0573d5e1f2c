/** Lays items with their histories out in columns, from words and texts as they are stored. */

import type { Attributes } from '../../item/attribute.ts';
import type { Capacity, FactKind, Outcome, TestKind } from '../../item/fact.ts';
import type { ItemKindId } from '../../item/item-kind.ts';
import type { VesselEvent } from '../../vessel/situation.ts';
import type { Override } from '../override.ts';
import { bearsOn } from '../own-rule.ts';
import type { SchemeId } from '../scheme.ts';
import { eventCode, factCode, kindCode, NONE, NOT_OWED, schemeBits } from './codes.ts';
import { fillFacts, inOrderOfDay } from './fill-facts.ts';
import { fillAttributes, fillOverrides } from './fill-particulars.ts';
import { withRoom } from './grow.ts';
import { emptyColumns, type ItemColumns } from './item-columns.ts';
import type { Plan } from './plan.ts';

/** A fact as it is stored: dates as ISO text, the instant in milliseconds. */
export type StoredFact = {
  readonly id: string;
  readonly fact: FactKind;
  readonly on: string;
  readonly outcome: Outcome;
  readonly test: TestKind | null;
  readonly capacity: Capacity | null;
  readonly until: string | null;
  readonly readOn: string | null;
  /** Running hours that the meter read. */
  readonly hours: number | null;
  readonly recordedAt: number;
  readonly corrects: string | null;
  readonly retracts?: boolean;
};

export type StoredItem = {
  readonly kind: ItemKindId;
  /** Her number, as `addVessel` gave it. */
  readonly vessel: number;
  readonly attributes: Attributes;
  readonly facts: readonly StoredFact[];
  readonly overrides?: readonly Override[];
};

export type StoredVessel = {
  readonly id?: string;
  readonly schemes: readonly SchemeId[];
  readonly events: readonly VesselEvent[];
};

/** Fills the same columns again and again, each time from the start. */
export type ColumnFiller = {
  readonly columns: ItemColumns;
  startAnew(): void;
  /** Answers with the vessel's number in the columns. */
  addVessel(vessel: StoredVessel): number;
  /** Throws on a date that should never have been stored, and on a word that is not in the catalogue. */
  addItem(item: StoredItem): void;
};

export function columnFiller(plan: Plan): ColumnFiller {
  const columns = emptyColumns();
  const order = inOrderOfDay();
  return {
    columns,
    startAnew: () => {
      columns.items = 0;
      columns.vessels = 0;
    },
    addVessel: (vessel) => fillVessel(vessel, plan, columns),
    addItem: (item) => fillItem(item, order, plan, columns),
  };
}

function fillVessel(vessel: StoredVessel, { own }: Plan, columns: ItemColumns): number {
  const { schemes, events } = vessel;
  const number = columns.vessels++;
  columns.vessel = withRoom(columns.vessel, columns.vessel.schemes, number + 2);
  const { eventsFrom } = columns.vessel;
  columns.vessel.schemes[number] = schemeBits(schemes);
  let row = eventsFrom[number] as number;
  columns.events = withRoom(columns.events, columns.events.on, row + events.length);
  for (const each of events.toSorted((a, b) => a.on - b.on || (a.id < b.id ? -1 : 1))) {
    columns.events.event[row] = eventCode(each.event);
    columns.events.on[row] = each.on;
    columns.events.planned[row] = each.planned ? 1 : 0;
    columns.events.recordedAt[row++] = Date.parse(each.recordedAt);
  }
  eventsFrom[number + 1] = row;
  fillBearing(vessel, own, number, columns);
  return number;
}

function fillBearing(vessel: StoredVessel, own: Plan['own'], number: number, columns: ItemColumns): void {
  const from = number * own.length;
  columns.ownRules = withRoom(columns.ownRules, columns.ownRules.bears, from + own.length);
  for (const [at, { vessels }] of own.entries()) columns.ownRules.bears[from + at] = bearsOn(vessels, vessel) ? 1 : 0;
}

type InOrder = ReturnType<typeof inOrderOfDay>;

function fillItem(stored: StoredItem, order: InOrder, plan: Plan, columns: ItemColumns): void {
  const { kind, vessel, attributes, facts, overrides = [] } = stored;
  const number = columns.items++;
  columns.item = withRoom(columns.item, columns.item.kind, number + 2);
  const { item } = columns;
  item.kind[number] = kindCode(kind);
  item.vessel[number] = vessel;
  item.factsFrom[number + 1] = fillFacts(order(facts), item.factsFrom[number] as number, columns);
  summarise(number, columns);
  item.attributesFrom[number + 1] = fillAttributes(attributes, item.attributesFrom[number] as number, plan, columns);
  item.overridesFrom[number + 1] = fillOverrides(overrides, item.overridesFrom[number] as number, plan, columns);
}

const SORTED_OUT: ReadonlySet<number> = new Set([factCode('replaced'), factCode('withdrawn'), factCode('extended')]);

/** What `takeAboard` asks first of an item: whether there is anything to sort out. */
function summarise(number: number, { item, facts }: ItemColumns): void {
  const { fact, day, first, recordedAt, corrects, retracts } = facts;
  let latest = NOT_OWED;
  let learnt = 0;
  let plain = 1;
  for (let row = item.factsFrom[number] as number; row < (item.factsFrom[number + 1] as number); row++) {
    if (SORTED_OUT.has(fact[row] as number) || corrects[row] !== NONE || retracts[row] === 1) plain = 0;
    latest = Math.max(latest, day[row] as number, first[row] as number);
    learnt = Math.max(learnt, recordedAt[row] as number);
  }
  item.plain[number] = plain;
  item.latest[number] = latest;
  item.learnt[number] = learnt;
}
