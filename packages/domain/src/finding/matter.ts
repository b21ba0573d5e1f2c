/** What an open finding wants of whom, and by when: its line of the due list. */
import type { Standing } from '../due-list/standing.ts';
import { type Calendar, dueOfFinding } from './due-of-finding.ts';
import type { IsoDay } from './entry.ts';
import type { Finding } from './finding.ts';
import { nextToDo } from './words.ts';

export const MATTER_SOURCES = ['finding', 'deferral', 'referral', 'limitation'] as const;
export type MatterSource = (typeof MATTER_SOURCES)[number];

/** What waits for somebody besides what rules ask. */
export type MatterSaid = {
  readonly source: MatterSource;
  readonly zone: string;
  readonly label: string;
  /** What somebody is to do. */
  readonly action: string;
  /** Why then. */
  readonly sentence: string;
  readonly urgency: string | null;
  readonly trade: string | null;
  readonly responsible: string | null;
  /** `null` where there is no date to go by. */
  readonly on: IsoDay | null;
};

/** How it stands on a day; all three are ISO days. */
export function standingOf(on: IsoDay | null, dueFrom: IsoDay, day: IsoDay): Standing {
  if (on === null) return 'unknown';
  if (on < day) return 'overdue';
  return dueFrom <= day ? 'due' : 'in_date';
}

/** `null`: it has ended, and wants nothing any more. */
export function matterOfFinding(finding: Finding, calendar: Calendar): MatterSaid | null {
  const due = dueOfFinding(finding, calendar);
  if (due.kind === 'ended') return null;
  return {
    source: due.kind === 'dated' ? due.source : 'finding',
    zone: finding.zone,
    label: finding.what,
    action: nextToDo(finding),
    sentence: due.because,
    urgency: finding.urgency,
    trade: finding.trade,
    responsible: finding.responsible,
    on: due.kind === 'dated' ? due.on : null,
  };
}
