/** What waits for somebody besides obligations. Derived: written with what it follows from. */
import { addDays, dayOfText, formatDay } from '@garboard/domain/calendar/day.ts';
import type { MatterSaid, MatterSource } from '@garboard/domain/finding/matter.ts';
import { NO_DATE } from '../item/obligation-record.ts';
import type { Scoped } from '../scope.ts';

export type Matter = MatterSaid & { readonly id: string; readonly vesselId: string };

/** It is called due from so many days ahead, as obligations are. House convention, no source. */
const LEAD_DAYS = 30;

/** Puts these in place of those, by their ids. */
export async function putMatters(
  tx: Scoped,
  organisationId: string,
  ids: readonly string[],
  matters: readonly Matter[],
): Promise<void> {
  const stays = new Set(matters.map(({ id }) => id));
  const gone = ids.filter((id) => !stays.has(id));
  if (gone.length > 0) await tx.deleteFrom('matter').where('id', 'in', gone).execute();
  if (matters.length === 0) return;
  await tx
    .insertInto('matter')
    .values(matters.map((matter) => columnsOf(organisationId, matter)))
    .onConflict((conflict) =>
      conflict.columns(['organisation_id', 'id']).doUpdateSet(({ ref }) => ({
        source: ref('excluded.source'),
        zone: ref('excluded.zone'),
        label: ref('excluded.label'),
        action: ref('excluded.action'),
        sentence: ref('excluded.sentence'),
        urgency: ref('excluded.urgency'),
        trade: ref('excluded.trade'),
        responsible: ref('excluded.responsible'),
        due_from: ref('excluded.due_from'),
        overdue_after: ref('excluded.overdue_after'),
      })),
    )
    .execute();
}

function columnsOf(organisationId: string, { on, vesselId, ...matter }: Matter) {
  return {
    organisation_id: organisationId,
    vessel_id: vesselId,
    ...matter,
    due_from: dueFromOf(on),
    overdue_after: on ?? NO_DATE,
  };
}

/** `infinity` where there is no date. */
export const dueFromOf = (on: string | null): string => (on === null ? NO_DATE : daysBefore(on, LEAD_DAYS));

const daysBefore = (text: string, days: number): string => formatDay(addDays(dayOfText(text), -days));

export async function loadMatterIds(tx: Scoped, vesselId: string, sources: readonly MatterSource[]): Promise<string[]> {
  const rows = await tx
    .selectFrom('matter')
    .select('id')
    .where('vessel_id', '=', vesselId)
    .where('source', 'in', [...sources])
    .execute();
  return rows.map(({ id }) => id);
}

/** Every column, by the id of what it is about. */
export async function loadMatters(tx: Scoped, vesselId: string): Promise<Map<string, unknown>> {
  const rows = await tx.selectFrom('matter').selectAll().where('vessel_id', '=', vesselId).execute();
  return new Map(rows.map((row) => [row.id, row]));
}
