/**
 * Whether a serial number lies in a range. Makers write them each in their own way, so this reads only what
 * most have in common: a number that counts up, with letters or figures before and after it that stay
 * (`AB1200`, `24-0133`, `M 77 B`). Common practice, no source. What cannot be compared is never taken to be outside.
 */
import { squeezed } from './likeness.ts';

/** Both ends inclusive; `null`: open. One number alone: both ends the same. At least one end is given. */
export type SerialRange = { readonly from: string | null; readonly to: string | null };

export type SerialVerdict = 'in' | 'out' | 'cannot_tell';

/** Over all ranges, in whatever order they stand: inside one is inside. */
export function serialWithin(serial: string, ranges: readonly SerialRange[]): SerialVerdict {
  const found = ranges.map((range) => serialInRange(serial, range));
  if (found.includes('in')) return 'in';
  return found.includes('cannot_tell') ? 'cannot_tell' : 'out';
}

export function serialInRange(serial: string, range: SerialRange): SerialVerdict {
  const ends = [range.from, range.to].filter((end) => end !== null);
  if (ends.some((end) => squeezed(end) === squeezed(serial))) return 'in';
  const alone = range.from !== null && range.to !== null && squeezed(range.from) === squeezed(range.to);
  return compared(range, serial, parted) ?? compared(range, serial, partedUnspaced) ?? unlike(serial, ends, alone);
}

/** Both ends of one pattern, and the first counts further than the last. */
export function isReversed({ from, to }: SerialRange): boolean {
  const [low, high] = [from, to].map((end) => (end === null ? null : parted(end)));
  return !!low && !!high && isOfOnePattern(low, high, false) && low.number > high.number;
}

/** What a serial number counts, and what stays around it. `width`: its digits as written. */
type Parts = { readonly before: string; readonly number: bigint; readonly width: number; readonly after: string };

/** The last run of digits counts. `24-0133` counts 133 after `24`. */
function parted(serial: string): Parts | null {
  const runs = serial.normalize('NFKC').match(/\p{L}+|\d+/gu) ?? [];
  const at = runs.findLastIndex((run) => /^\d/.test(run));
  const digits = runs[at];
  if (digits === undefined) return null;
  const around = (some: readonly string[]) => squeezed(some.join(''));
  return {
    before: around(runs.slice(0, at)),
    number: BigInt(digits),
    width: digits.length,
    after: around(runs.slice(at + 1)),
  };
}

/** The same with spaces and punctuation left out, as somebody may have written it down: `240133`. */
const partedUnspaced = (serial: string) => parted(squeezed(serial));

/** `null`: not all of one pattern, so the numbers say nothing. */
function compared(
  { from, to }: SerialRange,
  serial: string,
  read: (text: string) => Parts | null,
): 'in' | 'out' | null {
  const one = read(serial);
  const [low, high] = [from, to].map((end) => (end === null ? undefined : read(end)));
  if (!one || low === null || high === null) return null;
  const ends = [low, high].filter((end) => end !== undefined);
  const alike = ends.every((end) => isOfOnePattern(one, end, read === partedUnspaced));
  if (!alike) return null;
  return (low?.number ?? one.number) <= one.number && one.number <= (high?.number ?? one.number) ? 'in' : 'out';
}

/** Without its punctuation a number may have run into what stood before it: then only equal widths compare. */
function isOfOnePattern(one: Parts, end: Parts, unspaced: boolean): boolean {
  return one.before === end.before && one.after === end.after && (!unspaced || one.width === end.width);
}

/** Another pattern: outside, unless something may only have been left out or added when it was written down. */
function unlike(serial: string, ends: readonly string[], alone: boolean): 'out' | 'cannot_tell' {
  const one = parted(serial);
  const clearly = ends.every((end) => {
    const other = parted(end);
    if (!one || !other) return alone && !isPartOf(squeezed(serial), squeezed(end));
    return !isPartOf(one.before, other.before) || !isPartOf(one.after, other.after);
  });
  return clearly ? 'out' : 'cannot_tell';
}

const isPartOf = (a: string, b: string) => a.endsWith(b) || b.endsWith(a);
