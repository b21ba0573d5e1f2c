/** How long a thing has been out of date: days while days can be pictured, then whole years. */
import { numberInWords } from './number-words.ts';

const MOST_DAYS_SAID = 730;
const DAYS_A_YEAR = 365.25;

const years = (days: number) => Math.floor(days / DAYS_A_YEAR);

/** `64 d`, `11 y`. */
export function ageInShort(days: number): string {
  return days > MOST_DAYS_SAID ? `${years(days)} y` : `${days} d`;
}

/** `1 day`, `64 days`, `11 years`. */
export function age(days: number): string {
  if (days > MOST_DAYS_SAID) return `${years(days)} years`;
  return days === 1 ? '1 day' : `${days} days`;
}

/** `sixty-four days`, `eleven years`. */
export function ageInWords(days: number): string {
  if (days > MOST_DAYS_SAID) return `${numberInWords(years(days))} years`;
  return days === 1 ? 'one day' : `${numberInWords(days)} days`;
}
