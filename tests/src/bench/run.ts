/** `npm run bench [-- COUNT | --full]`: the rules engine beside date libraries doing the same rules; written to docs/bench.md. */
import { DATE_FNS, RRULE_LUXON, TEMPORAL } from './calendars.ts';
import { COLUMNS_ALONE, COMPILED } from './compiled.ts';
import type { Contender } from './contender.ts';
import { EXPLAINING } from './engine.ts';
import { measure } from './measure.ts';
import { byHand, byHandAlone } from './rules-by-hand.ts';
import { storedItems } from './stored-items.ts';
import { tableOf, writeBench } from './write-bench.ts';

const FULL = 600_000;
const DEFAULT = 20_000;

const NAMES = { rrule: 'rrule 2.8.1 and luxon 3.7.2', temporal: 'temporal-polyfill 1.0.8', dateFns: 'date-fns 4.4.0' };

/** Each from its own dates to its own dates: what is compared is the rules alone. */
const ALONE: readonly Contender[] = [
  COLUMNS_ALONE,
  { name: NAMES.rrule, goal: 120, ...byHandAlone(RRULE_LUXON) },
  { name: NAMES.temporal, goal: 30, ...byHandAlone(TEMPORAL) },
  { name: NAMES.dateFns, goal: 12, ...byHandAlone(DATE_FNS) },
];

/** Each from the rows as they are stored to text. */
const WITH_TEXT: readonly Contender[] = [
  COMPILED,
  EXPLAINING,
  { name: NAMES.rrule, work: byHand(RRULE_LUXON) },
  { name: NAMES.temporal, work: byHand(TEMPORAL) },
  { name: NAMES.dateFns, work: byHand(DATE_FNS) },
];

const [asked] = process.argv.slice(2);
const count = asked === '--full' ? FULL : Number(asked ?? DEFAULT);
if (!Number.isSafeInteger(count) || count < 1) throw new Error('how many items? a whole number, or --full');
const rounds = count === FULL ? 3 : 7;
const items = storedItems(count);

const alone = measure(ALONE, items, rounds);
console.log(tableOf(count, alone.measured));
const withText = measure(WITH_TEXT, items, rounds);
console.log(tableOf(count, withText.measured));
if (alone.checksum !== withText.checksum)
  throw new Error('the rules alone do not come to the dates that the text says');
writeBench({ count, rounds, checksum: alone.checksum, alone: alone.measured, withText: withText.measured });
