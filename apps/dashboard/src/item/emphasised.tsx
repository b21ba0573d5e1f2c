import type { ReactNode } from 'react';
import { formatDay, formatDayInFull } from '../ui/calendar.ts';
import type { Obligation } from './item.query.ts';

/** The sentence with the due day made strong, where it names it. */
export function emphasised({ dueOn, explanation: { sentence } }: Obligation): ReactNode {
  if (!dueOn) return sentence;
  const day = [formatDayInFull(dueOn), formatDay(dueOn)].find((each) => sentence.includes(each));
  if (!day) return sentence;
  const at = sentence.lastIndexOf(day);
  return (
    <>
      {sentence.slice(0, at)}
      <strong>{day}</strong>
      {sentence.slice(at + day.length)}
    </>
  );
}
