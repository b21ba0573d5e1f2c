/** Findings with what a reader wants beside them: the vessel's name, the thing, and what is due. */
import type { Hazard, Trade, Urgency } from '@garboard/domain/finding/codes.ts';
import type { MatterSource } from '@garboard/domain/finding/matter.ts';
import type { State } from '@garboard/domain/finding/next-state.ts';
import { type Selectable, sql } from 'kysely';
import { NO_DATE } from '../item/obligation-record.ts';
import { type Page, pageOf } from '../page.ts';
import type { Scoped } from '../scope.ts';
import { type FindingRecord, toFindingRecord } from './finding-record.ts';
import type { FindingTable } from './tables.ts';

/** `due`: absent where the finding has ended; `on` is `null` where there is no date to go by. */
export type FindingView = FindingRecord & {
  readonly vesselName: string;
  readonly timeZone: string;
  readonly item: { readonly id: string; readonly kind: string; readonly label: string } | null;
  readonly due: {
    readonly source: MatterSource;
    readonly on: string | null;
    readonly from: string;
    readonly because: string;
  } | null;
};

export type FindingFilter = {
  readonly vesselId?: string;
  readonly itemId?: string;
  readonly urgency?: Urgency;
  readonly hazard?: Hazard;
  readonly state?: State;
  readonly trade?: Trade;
  readonly zone?: string;
  readonly open?: boolean;
  /** Work that nobody has reported done or put off: in hand, or due or planned by this day. */
  readonly doBy?: string;
};

/** `urgency`: the most urgent first; `age`: the longest known first. */
export type FindingOrder = 'urgency' | 'age';
export type FindingKey = { readonly place: number | string; readonly id: string };

type Question = {
  readonly filter: FindingFilter;
  readonly order: FindingOrder;
  readonly limit: number;
  readonly after?: FindingKey;
};

type Row = Selectable<FindingTable> & {
  vessel_name: string;
  time_zone: string;
  item_kind: string | null;
  item_label: string | null;
  source: string | null;
  overdue_after: string | null;
  due_from: string | null;
  sentence: string | null;
};

const PLACE = { urgency: 'f.rank', age: 'f.first_seen_on' } as const;

export async function listFindings(tx: Scoped, { filter, order, limit, after }: Question): Promise<Page<FindingView>> {
  const place = PLACE[order];
  let query = views(tx)
    .orderBy(place)
    .orderBy('f.id')
    .limit(sql.lit(limit + 1));
  if (filter.vesselId) query = query.where('f.vessel_id', '=', filter.vesselId);
  if (filter.itemId) query = query.where('f.item_id', '=', filter.itemId);
  if (filter.urgency) query = query.where('f.urgency', '=', filter.urgency);
  if (filter.hazard) query = query.where('f.hazard', '=', filter.hazard);
  if (filter.state) query = query.where('f.state', '=', filter.state);
  if (filter.trade) query = query.where('f.trade', '=', filter.trade);
  if (filter.zone) query = query.where('f.zone', '=', filter.zone);
  if (filter.open !== undefined) query = query.where('f.is_open', '=', filter.open);
  if (filter.doBy) query = query.where(canBeDoneBy(filter.doBy));
  if (after)
    query = query.where(sql<boolean>`(${sql.ref(place)}, f.id) > (${placeOf(order, after)}, ${after.id}::uuid)`);
  return pageOf((await query.execute()).map(toView), limit);
}

const canBeDoneBy = (day: string) => sql<boolean>`(
  f.state = 'in_hand'
  or f.state in ('found', 'proposed', 'planned')
     and (m.overdue_after <= ${day}::date or (f.detail -> 'remedy' ->> 'forDay') <= ${day}))`;

const placeOf = (order: FindingOrder, { place }: FindingKey) =>
  order === 'urgency' ? sql`${place}::smallint` : sql`${place}::date`;

export async function loadFindingView(tx: Scoped, findingId: string): Promise<FindingView | null> {
  const row = await views(tx).where('f.id', '=', findingId).executeTakeFirst();
  return row ? toView(row) : null;
}

function views(tx: Scoped) {
  return tx
    .selectFrom('finding as f')
    .innerJoin('vessel as v', (join) =>
      join.onRef('v.organisation_id', '=', 'f.organisation_id').onRef('v.id', '=', 'f.vessel_id'),
    )
    .leftJoin('item as i', (join) =>
      join.onRef('i.organisation_id', '=', 'f.organisation_id').onRef('i.id', '=', 'f.item_id'),
    )
    .leftJoin('matter as m', (join) =>
      join.onRef('m.organisation_id', '=', 'f.organisation_id').onRef('m.id', '=', 'f.id'),
    )
    .selectAll('f')
    .select(['v.name as vessel_name', 'v.time_zone', 'i.kind as item_kind', 'i.label as item_label'])
    .select(['m.source', 'm.overdue_after', 'm.due_from', 'm.sentence']);
}

function toView(row: Row): FindingView {
  const { source, overdue_after, due_from, sentence } = row;
  return {
    ...toFindingRecord(row),
    vesselName: row.vessel_name,
    timeZone: row.time_zone,
    item: row.item_id === null ? null : { id: row.item_id, kind: row.item_kind ?? '', label: row.item_label ?? '' },
    due:
      (source && {
        source: source as MatterSource,
        on: overdue_after === NO_DATE ? null : overdue_after,
        from: due_from ?? NO_DATE,
        because: sentence ?? '',
      }) ||
      null,
  };
}
