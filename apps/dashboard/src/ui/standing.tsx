import { standingWords } from '../strings/codes.ts';

export type StandingCode = 'overdue' | 'due' | 'in_date' | 'unknown';

/** The mark, the tone and the word at once. */
export function Standing({ standing }: { standing: StandingCode }) {
  return <span className={`standing ${standing}`}>{standingWords[standing]}</span>;
}
