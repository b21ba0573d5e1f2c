/** An answer's row, as a record for the API and as a value for the matching. */
import type { DoneBy, Evidence } from '@garboard/domain/item/fact.ts';
import type { NoticeAnswer, NoticeAnswerKind } from '@garboard/domain/safety-notice/answer.ts';
import type { Insertable, Selectable } from 'kysely';
import { dayOf, dayOrNull } from './notice-record.ts';
import type { NoticeAnswerTable } from './tables.ts';

export type AnswerRecord = Omit<NoticeAnswer, 'on' | 'until'> & {
  readonly noticeId: string;
  readonly itemId: string;
  readonly vesselId: string;
  readonly on: string;
  readonly until: string | null;
  readonly replaced: boolean;
  readonly recordedBy: string;
};

export function toAnswerRecord(row: Selectable<NoticeAnswerTable>): AnswerRecord {
  return {
    id: row.id,
    noticeId: row.notice_id,
    itemId: row.item_id,
    vesselId: row.vessel_id,
    answer: row.answer as NoticeAnswerKind,
    on: row.on_day,
    doneBy: row.done_by as DoneBy,
    evidence: row.evidence as Evidence | null,
    reference: row.reference,
    note: row.note,
    until: row.until_day,
    serialRead: row.serial_read,
    serialThen: row.serial_then,
    replaced: row.replaced,
    corrects: row.corrects,
    recordedBy: row.recorded_by,
    recordedAt: row.recorded_at.toISOString(),
  };
}

export function toAnswerColumns(organisationId: string, record: AnswerRecord): Insertable<NoticeAnswerTable> {
  return {
    organisation_id: organisationId,
    id: record.id,
    notice_id: record.noticeId,
    item_id: record.itemId,
    vessel_id: record.vesselId,
    answer: record.answer,
    on_day: record.on,
    done_by: JSON.stringify(record.doneBy),
    evidence: record.evidence,
    reference: record.reference,
    note: record.note,
    until_day: record.until,
    serial_read: record.serialRead,
    serial_then: record.serialThen,
    replaced: record.replaced,
    corrects: record.corrects,
    recorded_by: record.recordedBy,
    recorded_at: record.recordedAt,
  };
}

/** The same as it is weighed. */
export function toAnswer(record: AnswerRecord): NoticeAnswer {
  const { noticeId: _, itemId: __, vesselId: ___, replaced: ____, recordedBy: _____, on, until, ...same } = record;
  return { ...same, on: dayOf(on), until: dayOrNull(until) };
}
