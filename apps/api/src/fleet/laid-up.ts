/** From when to when a vessel is laid up, as far as it touches the span asked about. */
import type { SituationRecord } from '@garboard/db/vessel/situations.ts';
import { addDays, formatDay } from '@garboard/domain/calendar/day.ts';
import { dayOfText } from '../request/as-at.ts';

type LaidUp = { readonly from: string; readonly to: string | null };

/** `situations` in the order of their days; of two on one day the later entry holds. `to` is the last day of it. */
export function laidUpSpans(
  situations: readonly SituationRecord[],
  { asOf, until }: { asOf: string; until: string },
): LaidUp[] {
  const spans: LaidUp[] = [];
  let since: string | null = null;
  for (const { from, use } of situations) {
    if (use === 'laid_up') since ??= from;
    else if (since !== null) {
      if (since < from) spans.push({ from: since, to: formatDay(addDays(dayOfText(from), -1)) });
      since = null;
    }
  }
  if (since !== null) spans.push({ from: since, to: null });
  return spans.filter((span) => span.from <= until && (span.to === null || span.to >= asOf));
}
