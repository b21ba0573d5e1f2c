/** Puts an organisation's own figure in place of a published interval. Only the items it touches are worked out again. */
import type { ItemRecord } from '@garboard/db/item/item-record.ts';
import { loadItem } from '@garboard/db/item/items.ts';
import type { OverrideRecord } from '@garboard/db/rule/override-record.ts';
import { insertOverride } from '@garboard/db/rule/overrides.ts';
import { lockVessel } from '@garboard/db/vessel/vessels.ts';
import { formatDay } from '@garboard/domain/calendar/day.ts';
import { dayInZone } from '@garboard/domain/calendar/day-in-zone.ts';
import type { ItemKindId } from '@garboard/domain/item/item-kind.ts';
import { overrideProblems } from '@garboard/domain/rule/override-problems.ts';
import { actorText, audit } from '../audit.ts';
import type { ActionContext } from '../context.ts';
import { newId } from '../new-id.ts';
import { done, type Fault, refused, type Written } from '../result.ts';
import { planFaults } from '../vessel/plan-faults.ts';
import { write } from '../write.ts';
import { refreshTouched } from './refresh-touched.ts';

export type NewOverride = Omit<OverrideRecord, 'id' | 'recordedAt' | 'recordedBy' | 'ended' | 'version'>;

export function setOverride(
  ctx: ActionContext,
  input: NewOverride,
): Promise<Written<OverrideRecord, 'not_found' | 'invalid'>> {
  return write(ctx, 'keep_register', async (write) => {
    const vessel = await lockVessel(write.tx, input.vesselId);
    if (!vessel) return refused({ kind: 'not_found' });
    const item = input.itemId === null ? null : await loadItem(write.tx, input.itemId);
    const today = formatDay(dayInZone(ctx.now, vessel.timeZone));
    const errors = [
      ...fromFaults(input.from, today, ctx.now),
      ...itemFaults(input, item),
      ...overrideProblems(input, (item?.kind ?? null) as ItemKindId | null),
    ];
    if (errors.length > 0) return refused({ kind: 'invalid', errors });
    const made = { recordedAt: ctx.now.toISOString(), recordedBy: actorText(ctx.actor) };
    const record: OverrideRecord = { ...input, ...made, id: newId(ctx.now), ended: null, version: 1 };
    await insertOverride(write.tx, ctx.organisationId, record);
    audit(write, {
      verb: 'set_override',
      subject: 'override',
      subjectId: record.id,
      before: null,
      after: record,
    });
    await refreshTouched(write.tx, ctx.organisationId, record);
    return done(record);
  });
}

/** What is stored holds on every day from now on, so nothing may begin to count by itself later. */
function fromFaults(from: string, today: string, now: Date): Fault[] {
  if (from > today) return [{ pointer: '/from', detail: 'lies in the future: set it on the day it takes effect' }];
  return planFaults('/from', from, now);
}

function itemFaults({ itemId, vesselId }: NewOverride, item: ItemRecord | null): Fault[] {
  if (itemId === null || item?.vesselId === vesselId) return [];
  return [{ pointer: '/itemId', detail: 'is no item of this vessel' }];
}
