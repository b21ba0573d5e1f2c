/** How many things each notice still waits for, and how many were answered. */
import { sql } from 'kysely';
import type { Scoped } from '../scope.ts';

export type NoticeCounts = {
  readonly affected: number;
  readonly mayBeAffected: number;
  /** Things whose last answer holds: done, or looked at and not affected. */
  readonly answered: number;
};

const NONE: NoticeCounts = { affected: 0, mayBeAffected: 0, answered: 0 };

export async function countAnswers(
  tx: Scoped,
  noticeIds: readonly string[],
): Promise<(noticeId: string) => NoticeCounts> {
  if (noticeIds.length === 0) return () => NONE;
  const { rows } = await sql<NoticeCounts & { id: string }>`
    select n.id::text as id,
      (select count(*)::integer from obligation o
        where o.rule_id like 'notice:%' and o.rule_id = 'notice:' || n.id::text
          and o.explanation #>> '{notice,match}' = 'affected') as affected,
      (select count(*)::integer from obligation o
        where o.rule_id like 'notice:%' and o.rule_id = 'notice:' || n.id::text
          and o.explanation #>> '{notice,match}' = 'may_be_affected') as "mayBeAffected",
      (select count(distinct a.item_id)::integer from notice_answer a
        where a.notice_id = n.id and a.answer in ('done', 'not_affected')
          and not exists (select from notice_answer c where c.corrects = a.id)
          and not exists (
            select from obligation o where o.item_id = a.item_id and o.rule_id = 'notice:' || n.id::text)) as answered
    from safety_notice n
    where n.id = any(${[...noticeIds]}::uuid[])`.execute(tx);
  const byId = new Map(rows.map(({ id, ...counts }) => [id, counts]));
  return (noticeId) => byId.get(noticeId) ?? NONE;
}
