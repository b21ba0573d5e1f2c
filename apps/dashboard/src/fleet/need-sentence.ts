/** Who needs somebody first, said in a sentence. */
import { countAll } from '../due-list/counts.ts';
import { ageInWords } from '../ui/age.ts';
import { daysBetween, formatDay } from '../ui/calendar.ts';
import { counted } from '../ui/number-words.ts';
import type { FleetRow } from './fleet.query.ts';

/** The vessel that leads, and what is said of her; the first of a list already in order of need. */
export function needSentence(rows: readonly FleetRow[], asOf: string): { vessel: string; rest: string } | null {
  const first = rows[0];
  if (!first) return null;
  const overdue = countAll(first.counts.overdue);
  const urgent = first.findings.before_use;
  if (urgent > 0)
    return {
      vessel: first.name,
      rest: ` first: ${urgentWords(urgent)}${overdue > 0 ? `; ${overdueWords(first, overdue, asOf)}` : '.'}`,
    };
  if (overdue > 0) return { vessel: first.name, rest: ` first: ${overdueWords(first, overdue, asOf)}` };
  if (!first.nextOverdueAfter) return null;
  return { vessel: first.name, rest: ` is next, on ${formatDay(first.nextOverdueAfter)}. Nobody is overdue.` };
}

const urgentWords = (count: number) =>
  `${counted(count, 'finding is', 'findings are')} to be put right before she is used`;

function overdueWords(row: FleetRow, overdue: number, asOf: string): string {
  const things = counted(overdue, 'thing', 'things');
  if (!row.oldestOverdueAfter) return `${things} out of date.`;
  const by = ageInWords(daysBetween(row.oldestOverdueAfter, asOf));
  const oldest = overdue === 1 ? 'by' : 'the oldest by';
  return `${things} out of date, ${oldest} ${by}.`;
}
