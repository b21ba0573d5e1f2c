/** Which day is asked about, and whether the stored obligations can answer. */
import { listVersionsToBegin } from '@garboard/db/rule/own-rules.ts';
import type { Scoped } from '@garboard/db/scope.ts';
import { type Day, dayOfText, formatDay } from '@garboard/domain/calendar/day.ts';
import { dayInZone } from '@garboard/domain/calendar/day-in-zone.ts';
import type { Cut } from '@garboard/domain/item/work-out-obligations.ts';

type Asked = { readonly asOf?: string | undefined; readonly knownAt?: string | undefined };

/**
 * `cut`: the answer must be worked out anew from the facts, because the day is gone, only older knowledge counts, or
 * an own rule changes until then.
 */
export type AsAt = { readonly day: Day; readonly text: string; readonly cut?: Cut };

export async function asAt(tx: Scoped, { asOf, knownAt }: Asked, now: Date, timeZone: string): Promise<AsAt> {
  const today = dayInZone(now, timeZone);
  const day = asOf === undefined ? today : dayOfText(asOf);
  const text = formatDay(day);
  if (knownAt !== undefined) return { day, text, cut: { asOf: day, knownAt } };
  const isPlanned = day > today && (await listVersionsToBegin(tx, text)).length > 0;
  return day < today || isPlanned ? { day, text, cut: { asOf: day } } : { day, text };
}
