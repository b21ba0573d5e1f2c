/** The audit as somebody reads it: the latest first, with the names of who and what, looked up now. */
import { type RawBuilder, sql } from 'kysely';
import { type Page, pageOf } from '../page.ts';
import type { Scoped } from '../scope.ts';

/** `from` and `to` are days in the organisation's time zone, both included. */
export type AuditFilter = {
  readonly subject?: string;
  readonly subjectId?: string;
  /** The vessel herself and all that is aboard. */
  readonly vesselId?: string;
  /** `kind:id`. */
  readonly actor?: string;
  readonly verb?: string;
  readonly from?: string;
  readonly to?: string;
};

export type ListedAudit = {
  readonly id: string;
  readonly at: Date;
  readonly actor: string;
  readonly actorName: string | null;
  readonly credential: string | null;
  readonly role: string | null;
  readonly requestId: string;
  readonly verb: string;
  readonly subject: string;
  readonly subjectId: string;
  readonly before: Record<string, unknown> | null;
  readonly after: Record<string, unknown> | null;
  readonly sequence: number | null;
  readonly hash: Buffer | null;
  readonly vesselId: string | null;
  readonly vesselName: string | null;
  readonly itemId: string | null;
  readonly itemLabel: string | null;
};

export async function listAudit(
  tx: Scoped,
  filter: AuditFilter,
  limit: number,
  before?: string,
): Promise<Page<ListedAudit>> {
  const conditions = sql.join([sql`true`, ...conditionsOf(filter, before)], sql` and `);
  const { rows } = await sql<ListedAudit>`
    with page as (
      select * from audit where ${conditions} order by id desc limit ${sql.lit(limit + 1)}
    ), about as (
      select page.*, coalesce(page.after, page.before) as told from page
    )
    select a.id, a.at, a.actor, coalesce(k.name, p.name, s.label) as "actorName", a.credential, a.role, a.request_id as "requestId",
           a.verb, a.subject, a.subject_id as "subjectId", a.before, a.after, a.sequence, a.hash,
           v.id as "vesselId", v.name as "vesselName", i.id as "itemId", i.label as "itemLabel"
    from about a
    left join api_key k on k.organisation_id = a.organisation_id and 'api_key:' || k.id = a.actor
    left join share_link s on s.organisation_id = a.organisation_id and 'share_link:' || s.id = a.actor
    left join people_of_organisation() p on 'person:' || p.person_id = a.actor
    left join item i on i.organisation_id = a.organisation_id
      and i.id = case a.subject when 'item' then a.subject_id else (a.told ->> 'itemId')::uuid end
    left join vessel v on v.organisation_id = a.organisation_id
      and v.id = case a.subject when 'vessel' then a.subject_id
                                else coalesce((a.told ->> 'vesselId')::uuid, i.vessel_id) end
    order by a.id desc`.execute(tx);
  return pageOf(rows, limit);
}

function conditionsOf(filter: AuditFilter, before?: string): RawBuilder<unknown>[] {
  const { subject, subjectId, vesselId, actor, verb, from, to } = filter;
  const zone = sql`(select time_zone from organisation)`;
  return [
    ...(subject ? [sql`subject = ${subject}`] : []),
    ...(subjectId ? [sql`subject_id = ${subjectId}::uuid`] : []),
    ...(vesselId ? [aboutVessel(vesselId)] : []),
    ...(actor ? [sql`actor = ${actor}`] : []),
    ...(verb ? [sql`verb = ${verb}`] : []),
    ...(from ? [sql`at >= ${from}::date::timestamp at time zone ${zone}`] : []),
    ...(to ? [sql`at < (${to}::date + 1)::timestamp at time zone ${zone}`] : []),
    ...(before ? [sql`id < ${before}::uuid`] : []),
  ];
}

/** As the names beside a row are found: by what the row is about, or by the thing it speaks of. */
function aboutVessel(vesselId: string): RawBuilder<unknown> {
  const aboard = sql`(select id from item where vessel_id = ${vesselId}::uuid)`;
  const told = sql`coalesce(after, before)`;
  return sql`(subject_id = ${vesselId}::uuid or ${told} ->> 'vesselId' = ${vesselId}
              or (subject = 'item' and subject_id in ${aboard}) or (${told} ->> 'itemId')::uuid in ${aboard})`;
}
