import type { ReactNode } from 'react';
import { dueDayIn } from './due-day-in.ts';
import type { Obligation } from './item.query.ts';

/** The sentence with the due day made strong, where it names it. */
export function emphasised({ dueOn, explanation: { sentence } }: Obligation): ReactNode {
  const day = dueOn ? dueDayIn(sentence, dueOn) : null;
  if (!day) return sentence;
  return (
    <>
      {sentence.slice(0, day.at)}
      <strong>{day.words}</strong>
      {sentence.slice(day.at + day.words.length)}
    </>
  );
}
