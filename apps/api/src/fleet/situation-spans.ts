/** From when to when a vessel is laid up, or stands ashore, as far as it touches the span asked about. */
import type { SituationRecord } from '@garboard/db/vessel/situations.ts';
import { addDays, dayOfText, formatDay } from '@garboard/domain/calendar/day.ts';

type DaySpan = { readonly from: string; readonly to: string | null };

export const isLaidUp = ({ use }: SituationRecord) => use === 'laid_up';
export const isAshore = ({ place }: SituationRecord) => place === 'ashore';

/** `situations` in the order of their days; of two on one day the later entry holds. `to` is the last day of it. */
export function situationSpans(
  situations: readonly SituationRecord[],
  holds: (situation: SituationRecord) => boolean,
  { asOf, until }: { asOf: string; until: string },
): DaySpan[] {
  const spans: DaySpan[] = [];
  let since: string | null = null;
  for (const situation of situations) {
    const { from } = situation;
    if (holds(situation)) since ??= from;
    else if (since !== null) {
      if (since < from) spans.push({ from: since, to: formatDay(addDays(dayOfText(from), -1)) });
      since = null;
    }
  }
  if (since !== null) spans.push({ from: since, to: null });
  return spans.filter((span) => span.from <= until && (span.to === null || span.to >= asOf));
}
