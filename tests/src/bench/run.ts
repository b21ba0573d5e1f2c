/** `npm run bench [-- COUNT | --full]`: the rules engine beside date libraries doing the same rules; written to docs/bench.md. */
import { DATE_FNS, RRULE_LUXON, TEMPORAL } from './calendars.ts';
import { COLUMNS_ALONE, COMPILED } from './compiled.ts';
import type { Contender } from './contender.ts';
import { EXPLAINING } from './engine.ts';
import { measure } from './measure.ts';
import { byHand } from './rules-by-hand.ts';
import { storedItems } from './stored-items.ts';
import { tableOf, writeBench } from './write-bench.ts';

const FULL = 600_000;
const DEFAULT = 20_000;

const CONTENDERS: readonly Contender[] = [
  COMPILED,
  COLUMNS_ALONE,
  EXPLAINING,
  { name: 'rrule 2.8.1 and luxon 3.7.2', goal: 120, work: byHand(RRULE_LUXON) },
  { name: 'temporal-polyfill 1.0.8', goal: 30, work: byHand(TEMPORAL) },
  { name: 'date-fns 4.4.0', goal: 12, work: byHand(DATE_FNS) },
];

const [asked] = process.argv.slice(2);
const count = asked === '--full' ? FULL : Number(asked ?? DEFAULT);
if (!Number.isSafeInteger(count) || count < 1) throw new Error('how many items? a whole number, or --full');
const rounds = count === FULL ? 3 : 7;

const bench = { count, rounds, ...measure(CONTENDERS, storedItems(count), rounds) };
console.log(tableOf(bench));
writeBench(bench);
