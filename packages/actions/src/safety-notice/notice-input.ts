/** What entering a notice and trying one out have in common. */
import { type NoticeRecord, toNotice } from '@garboard/db/safety-notice/notice-record.ts';
import { dayInZone } from '@garboard/domain/calendar/day-in-zone.ts';
import { noticeProblems } from '@garboard/domain/safety-notice/notice-problems.ts';
import type { Fault } from '../result.ts';

export type NoticeInput = Omit<NoticeRecord, 'id' | 'recordedAt' | 'recordedBy' | 'withdrawn' | 'version'>;

/** Where the day begins first: a notice may have come out there already. */
const FIRST_ZONE = 'Pacific/Kiritimati';

export function noticeFaults(input: NoticeInput, now: Date): Fault[] {
  return noticeProblems(toNotice(unstored(input, now)), dayInZone(now, FIRST_ZONE));
}

const NO_ID = '00000000-0000-0000-0000-000000000000';

/** As it would be entered now. */
export function unstored(input: NoticeInput, now: Date): NoticeRecord {
  return { ...input, id: NO_ID, recordedAt: now.toISOString(), recordedBy: '', withdrawn: null, version: 1 };
}
