/**
 * Whether a notice is about a thing. Every condition it names must hold; a condition that what is on record
 * cannot answer leaves it open, and never rules the thing out.
 */

import type { RecordedDate } from '../calendar/recorded-date.ts';
import { dayInWords, monthInWords, recordedDateInWords } from '../calendar/words.ts';
import type { ItemKindId } from '../item/item-kind.ts';
import type { Missing } from '../item/obligation.ts';
import { likenessToAny } from './likeness.ts';
import type { ManufacturedBetween, SafetyNotice } from './notice.ts';
import type { Plate } from './plate.ts';
import { type SerialRange, serialWithin } from './serial-range.ts';

/** What is on record of one thing. */
export type Thing = {
  readonly kind: ItemKindId;
  readonly plate: Plate;
  readonly manufactured: RecordedDate | null;
};

/** `because`: what was compared, in words. `open`: what could not be; `missing`: what would settle it. */
export type Match =
  | { readonly kind: 'affected'; readonly because: readonly string[] }
  | { readonly kind: 'may_be_affected'; readonly open: readonly string[]; readonly missing: readonly Missing[] }
  | { readonly kind: 'not_affected'; readonly because: readonly string[] };

type Criteria = Pick<SafetyNotice, 'kinds' | 'makers' | 'models' | 'serials' | 'manufactured'>;

export function matchNotice(notice: Criteria, thing: Thing): Match {
  const answers = [
    kindOf(notice.kinds, thing.kind),
    nameOf('maker', notice.makers, thing.plate.maker),
    nameOf('model', notice.models, thing.plate.model),
    serialOf(notice.serials, thing.plate),
    madeIn(notice.manufactured, thing.manufactured),
  ].filter((each) => each !== null);
  const differs = answers.filter(({ kind }) => kind === 'differs');
  if (differs.length > 0) return { kind: 'not_affected', because: differs.map(({ said }) => said) };
  const open = answers.filter(({ kind }) => kind === 'open');
  if (open.length === 0) return { kind: 'affected', because: answers.map(({ said }) => said) };
  return {
    kind: 'may_be_affected',
    open: open.map(({ said }) => said),
    missing: open.flatMap((each) => (each.missing ? [each.missing] : [])),
  };
}

/** What one condition answers; `null`: the notice does not name it. */
type Answer = { readonly kind: 'fits' | 'open' | 'differs'; readonly said: string; readonly missing?: Missing } | null;

const PLATE = 'the plate or mark on the thing itself';

function kindOf(kinds: readonly ItemKindId[], kind: ItemKindId): Answer {
  return kinds.includes(kind) ? null : { kind: 'differs', said: 'it is another kind of thing' };
}

function nameOf(what: 'maker' | 'model', names: readonly string[], name: string | null): Answer {
  if (names.length === 0) return null;
  if (name === null) return notOnRecord(what);
  switch (likenessToAny(name, names)) {
    case 'same':
      return { kind: 'fits', said: `${what} ${name}` };
    case 'perhaps':
      return {
        kind: 'open',
        said: `the ${what} is written “${name}” here and “${names.join('”, “')}” in the notice`,
        missing: { what: `${what} as on the plate`, whereFound: PLATE },
      };
    case 'other':
      return { kind: 'differs', said: `the ${what} is ${name}` };
  }
}

function serialOf(ranges: readonly SerialRange[], { serialNumber, quantity }: Plate): Answer {
  if (ranges.length === 0) return null;
  if (serialNumber === null) return notOnRecord('serial number');
  const list = ranges.map(rangeInWords).join(', ');
  switch (serialWithin(serialNumber, ranges)) {
    case 'in':
      return { kind: 'fits', said: `serial number ${serialNumber}, and the notice names ${list}` };
    case 'cannot_tell':
      return openSerial(`serial number ${serialNumber} cannot be compared with ${list}`);
    case 'out':
      return quantity > 1
        ? openSerial(`one serial number (${serialNumber}) is on record for ${quantity} things`)
        : { kind: 'differs', said: `serial number ${serialNumber} is not among ${list}` };
  }
}

const openSerial = (said: string): Answer => ({
  kind: 'open',
  said,
  missing: { what: 'serial number as on the plate', whereFound: PLATE },
});

function madeIn(between: ManufacturedBetween | null, made: RecordedDate | null): Answer {
  if (between === null) return null;
  if (made === null) return notOnRecord('date of manufacture');
  const { from, to } = between;
  const said = `made ${recordedDateInWords(made)}, and the notice names those made ${betweenInWords(between)}`;
  if ((from !== null && made.last < from) || (to !== null && made.first > to)) return { kind: 'differs', said };
  if ((from === null || made.first >= from) && (to === null || made.last <= to)) return { kind: 'fits', said };
  return {
    kind: 'open',
    said: `${said}: ${made.precision === 'month' ? monthInWords(made.first) : made.text} lies only partly within`,
    missing: { what: 'date of manufacture to the day', whereFound: PLATE },
  };
}

function notOnRecord(what: string): Answer {
  return { kind: 'open', said: `its ${what} is not on record`, missing: { what, whereFound: PLATE } };
}

/** "AB1200–AB1399", "AB1500", "AB2000 and later", "up to 99". */
export function rangeInWords({ from, to }: SerialRange): string {
  if (from === null) return `up to ${to}`;
  if (to === null) return `${from} and later`;
  return from === to ? from : `${from}–${to}`;
}

function betweenInWords({ from, to }: ManufacturedBetween): string {
  if (from === null) return to === null ? 'at any time' : `up to ${dayInWords(to)}`;
  return to === null ? `from ${dayInWords(from)} on` : `from ${dayInWords(from)} to ${dayInWords(to)}`;
}
