/** Safety notices: one statement a question. They are only added, and withdrawn. */
import { type RawBuilder, sql } from 'kysely';
import { type Page, pageOf } from '../page.ts';
import type { Scoped } from '../scope.ts';
import type { DatedKey } from '../vessel/situations.ts';
import { type NoticeRecord, type NoticeWithdrawal, toNoticeColumns, toNoticeRecord } from './notice-record.ts';

export async function loadNotice(tx: Scoped, id: string): Promise<NoticeRecord | null> {
  const row = await tx.selectFrom('safety_notice').selectAll().where('id', '=', id).executeTakeFirst();
  return row ? toNoticeRecord(row) : null;
}

/** All that name one of the kinds, withdrawn ones too. */
export async function loadNoticesOfKinds(tx: Scoped, kinds: readonly string[]): Promise<NoticeRecord[]> {
  const rows = await tx
    .selectFrom('safety_notice')
    .selectAll()
    .where(sql<boolean>`kinds && ${[...kinds]}::text[]`)
    .orderBy('id')
    .execute();
  return rows.map(toNoticeRecord);
}

export const NOTICE_STATES = ['open', 'answered', 'withdrawn'] as const;
export type NoticeState = (typeof NOTICE_STATES)[number];

/** The latest first; without `state` all of them. */
export async function listNotices(
  tx: Scoped,
  { state, limit, before }: { state?: NoticeState; limit: number; before?: DatedKey },
): Promise<Page<NoticeRecord>> {
  let query = tx
    .selectFrom('safety_notice')
    .selectAll()
    .orderBy('issued_on', 'desc')
    .orderBy('id', 'desc')
    .limit(sql.lit(limit + 1));
  if (state) query = query.where(IN_STATE[state]);
  if (before) query = query.where(sql<boolean>`(issued_on, id) < (${before.on}::date, ${before.id}::uuid)`);
  return pageOf((await query.execute()).map(toNoticeRecord), limit);
}

/** Whether anything of it is still to be answered is what its obligations say. */
const OWED = sql`exists (
  select from obligation o
  where o.organisation_id = safety_notice.organisation_id
    and o.rule_id like 'notice:%' and o.rule_id = 'notice:' || safety_notice.id::text)`;

const IN_STATE: Record<NoticeState, RawBuilder<boolean>> = {
  open: sql`withdrawn_on is null and ${OWED}`,
  answered: sql`withdrawn_on is null and not ${OWED}`,
  withdrawn: sql`withdrawn_on is not null`,
};

export async function insertNotice(tx: Scoped, organisationId: string, record: NoticeRecord): Promise<void> {
  await tx.insertInto('safety_notice').values(toNoticeColumns(organisationId, record)).execute();
}

export async function markWithdrawn(tx: Scoped, id: string, withdrawal: NoticeWithdrawal): Promise<void> {
  await tx
    .updateTable('safety_notice')
    .set({
      withdrawn_on: withdrawal.on,
      withdrawn_at: withdrawal.recordedAt,
      withdrawn_by: withdrawal.recordedBy,
      withdrawn_reason: withdrawal.reason,
    })
    .where('id', '=', id)
    .execute();
}
