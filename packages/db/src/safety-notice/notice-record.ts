/** A notice's row, as a record for the API and as a value for the matching. */
import { type Day, formatDay, parseDay } from '@garboard/domain/calendar/day.ts';
import type { ItemKindId } from '@garboard/domain/item/item-kind.ts';
import type { Deadline, NoticeAction, NoticeWeight, SafetyNotice } from '@garboard/domain/safety-notice/notice.ts';
import type { Insertable, Selectable } from 'kysely';
import type { SafetyNoticeTable } from './tables.ts';

export type NoticeWithdrawal = {
  readonly on: string;
  readonly reason: string;
  readonly recordedAt: string;
  readonly recordedBy: string;
};

/** Days are ISO text: a record crosses into JSON, and the kept answer of a repeated request is one. */
export type NoticeRecord = Omit<SafetyNotice, 'issuedOn' | 'manufactured' | 'deadline' | 'withdrawn'> & {
  readonly issuedOn: string;
  readonly manufactured: { readonly from: string | null; readonly to: string | null } | null;
  readonly deadline: DeadlineRecord;
  readonly recordedBy: string;
  readonly withdrawn: NoticeWithdrawal | null;
  /** 1 open, 2 withdrawn: nothing else of it ever changes. */
  readonly version: number;
};

export type DeadlineRecord = Exclude<Deadline, { kind: 'on' }> | { readonly kind: 'on'; readonly on: string };

export function toNoticeRecord(row: Selectable<SafetyNoticeTable>): NoticeRecord {
  const withdrawn = toWithdrawal(row);
  return {
    id: row.id,
    title: row.title,
    publisher: row.publisher,
    reference: row.reference,
    issuedOn: row.issued_on,
    address: row.address,
    document: row.document,
    kinds: row.kinds as ItemKindId[],
    makers: row.makers,
    models: row.models,
    serials: row.serials,
    manufactured: row.made_from === null && row.made_to === null ? null : { from: row.made_from, to: row.made_to },
    hazard: row.hazard,
    action: { kind: row.action_kind as NoticeAction, words: row.action_words },
    deadline: toDeadline(row),
    weight: row.weight as NoticeWeight,
    recordedBy: row.recorded_by,
    recordedAt: row.recorded_at.toISOString(),
    withdrawn,
    version: withdrawn ? 2 : 1,
  };
}

function toDeadline({ id, deadline_kind, deadline_on, deadline_days }: Selectable<SafetyNoticeTable>): DeadlineRecord {
  if (deadline_kind === 'before_next_use') return { kind: deadline_kind };
  if (deadline_kind === 'on' && deadline_on !== null) return { kind: deadline_kind, on: deadline_on };
  if (deadline_kind === 'days_after_issue' && deadline_days !== null)
    return { kind: deadline_kind, days: deadline_days };
  throw new Error(`safety notice ${id}: no deadline ${deadline_kind}`);
}

function toWithdrawal(row: Selectable<SafetyNoticeTable>): NoticeWithdrawal | null {
  const { withdrawn_on: on, withdrawn_at: at, withdrawn_by: by, withdrawn_reason: reason } = row;
  if (on === null || at === null || by === null || reason === null) return null;
  return { on, reason, recordedAt: at.toISOString(), recordedBy: by };
}

export function toNoticeColumns(organisationId: string, record: NoticeRecord): Insertable<SafetyNoticeTable> {
  const { deadline, manufactured } = record;
  return {
    organisation_id: organisationId,
    id: record.id,
    title: record.title,
    publisher: record.publisher,
    reference: record.reference,
    issued_on: record.issuedOn,
    address: record.address,
    document: record.document,
    kinds: [...record.kinds],
    makers: [...record.makers],
    models: [...record.models],
    serials: JSON.stringify(record.serials),
    made_from: manufactured?.from ?? null,
    made_to: manufactured?.to ?? null,
    hazard: record.hazard,
    action_kind: record.action.kind,
    action_words: record.action.words,
    deadline_kind: deadline.kind,
    deadline_on: deadline.kind === 'on' ? deadline.on : null,
    deadline_days: deadline.kind === 'days_after_issue' ? deadline.days : null,
    weight: record.weight,
    recorded_by: record.recordedBy,
    recorded_at: record.recordedAt,
  };
}

/** The same as it is matched. */
export function toNotice(record: NoticeRecord): SafetyNotice {
  const { recordedBy: _, version: __, manufactured, deadline, withdrawn, ...same } = record;
  return {
    ...same,
    issuedOn: dayOf(record.issuedOn),
    manufactured: manufactured && { from: dayOrNull(manufactured.from), to: dayOrNull(manufactured.to) },
    deadline: deadline.kind === 'on' ? { kind: 'on', on: dayOf(deadline.on) } : deadline,
    withdrawn: withdrawn && { on: dayOf(withdrawn.on), recordedAt: withdrawn.recordedAt },
  };
}

export const dayOrNull = (text: string | null): Day | null => (text === null ? null : dayOf(text));
export const textOrNull = (day: Day | null): string | null => (day === null ? null : formatDay(day));

export function dayOf(text: string): Day {
  const day = parseDay(text);
  if (day === null) throw new Error(`safety notice: no day ${text}`);
  return day;
}
