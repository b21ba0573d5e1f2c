/** A vessel's limitations and referrals as they stood on a day, or as they were known then. */
import { formatDay } from '@garboard/domain/calendar/day.ts';
import { type Calendar, nextAfter } from '@garboard/domain/finding/due-of-finding.ts';
import type { MatterSaid } from '@garboard/domain/finding/matter.ts';
import type { Cut } from '@garboard/domain/item/work-out-obligations.ts';
import { matterOfLimitation, matterOfReferral } from '@garboard/domain/survey-visit/matters.ts';
import { type RawBuilder, sql } from 'kysely';
import type { MatterEntry } from '../due-list/due-entry.ts';
import { dueFromOf } from '../finding/matters.ts';
import type { Scoped } from '../scope.ts';

export async function workOutVisitMatters(
  tx: Scoped,
  vessel: MatterEntry['vessel'],
  { asOf, knownAt }: Cut,
  calendar: Calendar,
): Promise<MatterEntry[]> {
  const day = asOf === undefined ? 'infinity' : formatDay(asOf);
  const instant = knownAt ?? 'infinity';
  const toEntry = (id: string, said: MatterSaid | null): MatterEntry[] =>
    said ? [{ vessel, matter: { id, ...said }, dueFrom: dueFromOf(said.on) }] : [];
  const limitations = await rows<LimitationRow>(tx, limitationsOn(vessel.id, day, instant));
  const referrals = await rows<ReferralRow>(tx, referralsOn(vessel.id, day, instant));
  return [
    ...limitations.flatMap(({ id, ...row }) =>
      toEntry(id, matterOfLimitation(row, nextAfter(calendar.visits, row.imposedOn))),
    ),
    ...referrals.flatMap(({ id, ...row }) => toEntry(id, matterOfReferral(row))),
  ];
}

type LimitationRow = {
  id: string;
  zone: string;
  what: string;
  trade: string | null;
  imposedOn: string;
  liftedOn: string | null;
};
type ReferralRow = {
  id: string;
  zone: string;
  what: string;
  trade: string;
  dueOn: string;
  responsible: string | null;
  isAnswered: boolean;
};

async function rows<Row>(tx: Scoped, query: RawBuilder<Row>): Promise<Row[]> {
  return (await query.execute(tx)).rows;
}

const limitationsOn = (vesselId: string, day: string, instant: string) => sql<LimitationRow>`
  select l.id, zone, what, trade, imposed_on as "imposedOn",
    (select max(a.on_day) from limitation_answer a
      where a.organisation_id = l.organisation_id and a.limitation_id = l.id and a.answer = 'lifted'
        and a.on_day <= ${day}::date and a.recorded_at <= ${instant}::timestamptz) as "liftedOn"
  from limitation l
  where vessel_id = ${vesselId}::uuid and imposed_on <= ${day}::date and created_at <= ${instant}::timestamptz`;

const referralsOn = (vesselId: string, day: string, instant: string) => sql<ReferralRow>`
  select id, zone, what, trade, due_on as "dueOn", responsible,
    result is not null and (result ->> 'on')::date <= ${day}::date
      and (result ->> 'recordedAt')::timestamptz <= ${instant}::timestamptz as "isAnswered"
  from referral
  where vessel_id = ${vesselId}::uuid and asked_on <= ${day}::date and created_at <= ${instant}::timestamptz`;
