/** Records one dated statement about an item; what follows from it is right when this returns. */
import { type FactRecord, toFact } from '@garboard/db/item/fact-record.ts';
import { insertFact } from '@garboard/db/item/facts.ts';
import type { ItemRecord } from '@garboard/db/item/item-record.ts';
import { loadItem, touchItem } from '@garboard/db/item/items.ts';
import { loadItemHistories } from '@garboard/db/item/load-histories.ts';
import { lockVessel } from '@garboard/db/vessel/vessels.ts';
import { formatDay } from '@garboard/domain/calendar/day.ts';
import { dayInZone } from '@garboard/domain/calendar/day-in-zone.ts';
import { factProblems } from '@garboard/domain/item/fact-problems.ts';
import { isPlate } from '@garboard/domain/item/facts-on-record.ts';
import type { Obligation } from '@garboard/domain/item/obligation.ts';
import { actorText, audit } from '../audit.ts';
import type { ActionContext } from '../context.ts';
import { newId } from '../new-id.ts';
import { done, type Result, refused, type Written } from '../result.ts';
import { type Write, write } from '../write.ts';
import { refreshObligations } from './refresh-obligations.ts';

export type FactInput = Omit<FactRecord, 'id' | 'itemId' | 'recordedAt' | 'recordedBy'>;
export type NewFact = { readonly itemId: string; readonly expectedVersion?: number; readonly fact: FactInput };

export type FactRecorded = {
  readonly fact: FactRecord;
  readonly item: ItemRecord;
  /** The day it was at the vessel's place. */
  readonly asOf: string;
  /** The item's obligations as they stand now. */
  readonly obligations: readonly Obligation[];
  /** Why the statement looks odd, though a real record can look like that. */
  readonly doubts: readonly string[];
};

export function recordFact(ctx: ActionContext, fact: NewFact): Promise<Written<FactRecorded, FactRefusal>> {
  return write(ctx, 'record_facts', (write) => recordFactIn(write, fact));
}

type FactRefusal = 'not_found' | 'stale' | 'invalid';

/** The same as a part of another act, in that act's transaction. */
export async function recordFactIn(
  write: Write,
  { itemId, expectedVersion, fact }: NewFact,
): Promise<Result<FactRecorded, FactRefusal>> {
  const { ctx } = write;
  const locked = await lockItem(write, itemId);
  if (!locked) return refused({ kind: 'not_found' });
  const { item, today, history } = locked;
  if (expectedVersion !== undefined && item.version !== expectedVersion)
    return refused({ kind: 'stale', version: item.version });
  const record = toRecord(ctx, itemId, fact, formatDay(today));
  const { problems, doubts } = factProblems(toFact(record), history, today);
  if (problems.length > 0) return refused({ kind: 'invalid', errors: problems });
  await insertFact(write.tx, ctx.organisationId, record);
  const version = await touchItem(write.tx, itemId);
  audit(write, { verb: 'record_fact', subject: 'fact', subjectId: record.id, before: null, after: record });
  const { obligations } = await refreshObligations(write.tx, ctx.organisationId, item.vesselId, [itemId]);
  return done({
    fact: record,
    item: { ...item, version },
    asOf: formatDay(today),
    obligations: obligations.get(itemId) ?? [],
    doubts,
  });
}

async function lockItem({ tx, ctx }: Write, itemId: string) {
  const found = await loadItem(tx, itemId);
  const vessel = found && (await lockVessel(tx, found.vesselId));
  const [loaded] = vessel ? await loadItemHistories(tx, vessel.id, [itemId]) : [];
  return vessel && loaded ? { ...loaded, today: dayInZone(ctx.now, vessel.timeZone) } : null;
}

function toRecord(ctx: ActionContext, itemId: string, fact: FactInput, today: string): FactRecord {
  return {
    ...fact,
    readOn: fact.readOn ?? (isPlate(fact) ? today : null),
    id: newId(ctx.now),
    itemId,
    recordedAt: ctx.now.toISOString(),
    recordedBy: actorText(ctx.actor),
  };
}
