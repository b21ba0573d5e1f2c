/** What the outcome comes to, to end the sentence: "so it is due by 22 September 2026". */
import { dayInWords } from '../calendar/words.ts';
import type { Duty } from '../rule/rule.ts';
import type { Dated } from './date-outcome.ts';
import type { Extended } from './extended-until.ts';
import type { LimitCount } from './limit-count.ts';
import type { Window } from './obligation.ts';

export function outcomeInWords(outcome: Dated, duty: Duty, binds: LimitCount, said: Pick<Extended, 'until'>): string {
  const parts = [`so ${endInWords(outcome, duty, binds)}`];
  if (outcome.replaceBy !== undefined) parts.push(`and is to be replaced by ${dayInWords(outcome.replaceBy)}`);
  if (outcome.windows.length > 0) parts.push(`in the window ${outcome.windows.map(windowInWords).join(' or ')}`);
  if (said.until !== null) parts.push(`extended on record to ${dayInWords(said.until)}`);
  return parts.join(', ').replace(', and is', ' and is');
}

function endInWords(outcome: Dated, duty: Duty, binds: LimitCount): string {
  const due = dayInWords(outcome.dueOn);
  if (outcome.expiresOn !== undefined) return `it is out of date after ${dayInWords(outcome.expiresOn)}`;
  if (binds.source.kind === 'before_event' && binds.factIds.length > 0) return `the latest start it covers is ${due}`;
  return duty.action.kind === 'withdraw' ? `it is to be withdrawn by ${due}` : `it is due by ${due}`;
}

function windowInWords({ opens, closes }: Window): string {
  return `from ${dayInWords(opens)} to ${dayInWords(closes)}`;
}
