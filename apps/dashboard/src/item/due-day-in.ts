/** Where a sentence of reasoning comes to its day: after "so", since the day may stand in its grounds or after its end too. */
import { formatDay, formatDayInFull } from '../ui/calendar.ts';

export type DayInSentence = { readonly at: number; readonly words: string };

export function dueDayIn(sentence: string, dueOn: string): DayInSentence | null {
  const from = Math.max(0, sentence.indexOf(', so '));
  const found = [formatDayInFull(dueOn), formatDay(dueOn)]
    .map((words) => ({ words, at: sentence.indexOf(words, from) }))
    .filter(({ at }) => at >= 0);
  return found[0] ?? null;
}
