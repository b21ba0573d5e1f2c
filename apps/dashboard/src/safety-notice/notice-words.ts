/** A notice in words: what it covers, and by when. */
import { strings } from '../strings/safety-notice.ts';
import { formatDay, readersToday } from '../ui/calendar.ts';
import { inAList } from '../ui/number-words.ts';
import type { NoticeAnswer, NoticeItem, SafetyNotice } from './notice.query.ts';

type Range = SafetyNotice['serials'][number];

/** "AB1200 – AB1399", "AB1500", "from AB2000", "up to 99": as the form reads it. */
function rangeInWords({ from, to }: Range): string {
  if (from === undefined) return `up to ${to}`;
  if (to === undefined) return `from ${from}`;
  return from === to ? from : `${from} – ${to}`;
}

export function deadlineInWords({ deadline, dueOn }: Pick<SafetyNotice, 'deadline' | 'dueOn'>): string {
  switch (deadline.kind) {
    case 'on':
      return strings.deadline.on(formatDay(dueOn));
    case 'days_after_issue':
      return strings.deadline.days_after_issue(deadline.days, formatDay(dueOn));
    case 'before_next_use':
      return strings.deadline.before_next_use;
  }
}

/** One line for each condition that it names. */
export function coverageInWords(notice: SafetyNotice, kindNames: readonly string[]): string[] {
  const { makers, models, serials, manufactured } = notice;
  return [
    `Kind: ${inAList(kindNames)}`,
    ...(makers.length > 0 ? [`Made by ${inAList(makers)}`] : []),
    ...(models.length > 0 ? [`Model ${inAList(models)}`] : []),
    ...(serials.length > 0 ? [`Serial numbers ${serials.map(rangeInWords).join(', ')}`] : []),
    ...(manufactured ? [`Made ${rangeInWords(inDays(manufactured))}`] : []),
  ];
}

const inDays = ({ from, to }: Range): Range => ({
  ...(from !== undefined && { from: formatDay(from) }),
  ...(to !== undefined && { to: formatDay(to) }),
});

/** "Done on 1 Oct 2026 by Ines Vale, W-118; another one was put in its place". */
export function answerInWords(answer: NoticeAnswer): string {
  const how = [
    `${strings.answers[answer.answer]} on ${formatDay(answer.on)} by ${answer.doneBy.name}`,
    answer.reference,
  ];
  const more = [
    answer.serialRead && `serial number ${answer.serialRead} read`,
    answer.replaced && 'another one was put in its place',
    answer.until && `until ${formatDay(answer.until)}`,
    answer.note && `“${answer.note}”`,
  ];
  return [how.filter(Boolean).join(', '), ...more.filter(Boolean)].join('; ');
}

/** The mark beside a thing: past its day it is overdue, looked at or not; before it, what nobody has looked at is not known. */
export function markOf({ dueOn }: Pick<SafetyNotice, 'dueOn'>, state: NoticeItem['state']): string {
  if (state === 'answered') return 'in_date';
  if (dueOn < readersToday()) return 'overdue';
  return state === 'affected' ? 'due' : 'unknown';
}
