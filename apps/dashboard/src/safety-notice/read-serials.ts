/** Reads serial numbers as a notice lists them: one range a line. A hyphen with no space around it is part of a number. */
import type { NewSafetyNotice } from './notice.query.ts';

type Ranges = NonNullable<NewSafetyNotice['serials']>;
export type ReadSerials = { kind: 'read'; ranges: Ranges } | { kind: 'fault'; line: string };

export function readSerials(text: string): ReadSerials {
  const ranges: Ranges = [];
  for (const line of text.split(/[\n,;]/).map((each) => each.trim())) {
    if (line === '') continue;
    const range = readRange(line);
    if (!range) return { kind: 'fault', line };
    ranges.push(range);
  }
  return { kind: 'read', ranges };
}

const DASH = /\s*[–—]\s*|\s+-\s+|\s+to\s+|\s+until\s+/i;

function readRange(line: string): Ranges[number] | null {
  const from = /^(?:from\s+(.+)|(.+?)\s+(?:and (?:later|up)|on|onwards))$/i.exec(line);
  const open = from?.[1] ?? from?.[2];
  if (open !== undefined && !DASH.test(open)) return holds(open) ? { from: open.trim() } : null;
  const upTo = /^(?:up to|until|to)\s+(.+)$/i.exec(line)?.[1];
  if (upTo !== undefined) return holds(upTo) ? { to: upTo.trim() } : null;
  const ends = line.replace(/^from\s+/i, '').split(DASH);
  const [first, last] = ends;
  if (ends.length > 2 || first === undefined || !holds(first)) return null;
  if (last === undefined) return { from: first, to: first };
  return holds(last) ? { from: first, to: last } : null;
}

const holds = (text: string) => /[\p{L}\p{N}]/u.test(text);
