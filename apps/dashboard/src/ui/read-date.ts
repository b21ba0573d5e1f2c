/** Reads a date as people write it: `2026-11-25`, `25 Nov 2026`, `Nov 2026`, `2026-11`, `2026`. */
import { strings } from '../strings/record.ts';

/** `date` is ISO to the day, the month or the year: no more precise than what was written. */
export type ReadDate =
  | { readonly kind: 'read'; readonly date: string }
  | { readonly kind: 'fault'; readonly why: string };

const MONTHS = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec'];
const FULL = 'january february march april may june july august september october november december'.split(' ');
const { dateFaults } = strings;

export function readDate(typed: string): ReadDate {
  const text = typed.trim().toLowerCase().replaceAll(/[,.]/g, ' ').replaceAll(/\s+/g, ' ').trim();
  if (text === '') return fault(dateFaults.none);
  if (/^\d{1,2} ?[/-] ?\d{1,2} ?[/-] ?\d{2,4}$/.test(text) || /^\d{1,2} \d{1,2} \d{2,4}$/.test(text))
    return fault(dateFaults.order);
  const iso = /^(\d{4})(?:-(\d{1,2})(?:-(\d{1,2}))?)?$/.exec(text);
  if (iso) return exact(iso[1], iso[2], iso[3]);
  const lettered = /^(?:(\d{1,2})(?:st|nd|rd|th)? )?([a-z]+) (\d{4})$/.exec(text) ?? reversed(text);
  const month = monthNumber(lettered?.[2] ?? '');
  return lettered && month ? exact(lettered[3], String(month), lettered[1]) : fault(dateFaults.unreadable);
}

/** `Nov 25 2026`, turned to the order used here. */
function reversed(text: string): (string | undefined)[] | null {
  const match = /^([a-z]+) (\d{1,2})(?:st|nd|rd|th)? (\d{4})$/.exec(text);
  return match && [text, match[2], match[1], match[3]];
}

function monthNumber(word: string): number | null {
  if (word === 'sept') return 9;
  const index = word.length === 3 ? MONTHS.indexOf(word) : FULL.indexOf(word);
  return index < 0 ? null : index + 1;
}

function exact(year: string | undefined, month: string | undefined, day: string | undefined): ReadDate {
  const parts = [year, month, day].filter((part) => part !== undefined).map((part) => part.padStart(2, '0'));
  return exists(Number(year), Number(month ?? 1), Number(day ?? 1))
    ? { kind: 'read', date: parts.join('-') }
    : fault(dateFaults.noSuchDay);
}

function exists(year: number, month: number, day: number): boolean {
  const date = new Date(Date.UTC(year, month - 1, day));
  return date.getUTCFullYear() === year && date.getUTCDate() === day;
}

const fault = (why: string): ReadDate => ({ kind: 'fault', why });
