/** Contenders on the same items, in alternating rounds: what is compared is always of the same round. */
import type { Contender, Take } from './contender.ts';
import type { StoredItem } from './stored-items.ts';

export type Round = { readonly seconds: number; readonly heapGrowthMb: number; readonly rssMb: number };
export type Measured = { readonly contender: Contender; readonly rounds: readonly Round[] };

/** A first round warms up and is not counted. Throws when two contenders do not agree on every date. */
export function measure(
  contenders: readonly Contender[],
  items: readonly StoredItem[],
  rounds: number,
): { measured: readonly Measured[]; checksum: string } {
  const counted = contenders.map((): Round[] => []);
  const sums = new Set<string>();
  for (let round = 0; round <= rounds; round++) {
    for (const at of orderOf(round, contenders.length)) {
      const { figures, checksum } = run(contenders[at] as Contender, items);
      sums.add(checksum);
      if (sums.size > 1) throw new Error(`${contenders[at]?.name}: its dates are not those of the others`);
      if (round > 0) counted[at]?.push(figures);
    }
  }
  return {
    measured: contenders.map((contender, at) => ({ contender, rounds: counted[at] ?? [] })),
    checksum: [...sums][0] ?? '',
  };
}

/** Each round begins with another one and every second goes backwards, so that none always follows the same. */
function orderOf(round: number, count: number): readonly number[] {
  const order = Array.from({ length: count }, (_, at) => (at + round) % count);
  return round % 2 === 0 ? order : order.reverse();
}

function run(contender: Contender, items: readonly StoredItem[]): { figures: Round; checksum: string } {
  const { before, work, after } = contender;
  const sum = checksum();
  before?.(items);
  globalThis.gc?.();
  // A collection that is asked for throws away what the compiler had learnt: some turns for it to learn it again.
  turns(contender, items);
  const memory = process.memoryUsage();
  const seconds = turns(contender, items);
  const now = process.memoryUsage();
  work(items, sum.take);
  after?.(sum.take);
  return {
    figures: { seconds, heapGrowthMb: (now.heapUsed - memory.heapUsed) / 2 ** 20, rssMb: now.rss / 2 ** 20 },
    checksum: sum.text(),
  };
}

const TURNS_LAST_MS = 250;

/** Seconds a turn, over as many as a quarter of a second holds, and at least one. */
function turns({ work }: Contender, items: readonly StoredItem[]): number {
  const start = performance.now();
  let count = 0;
  let passed = 0;
  while (count === 0 || passed < TURNS_LAST_MS) {
    work(items, ignored);
    passed = performance.now() - start;
    count++;
  }
  return passed / count / 1000;
}

const ignored: Take = () => undefined;

/** FNV-1a over every date in order, as they come: nobody has to keep them. */
function checksum(): { take: Take; text: () => string } {
  let hash = 0x811c9dc5;
  const take: Take = (date) => {
    for (let at = 0; at < date.length; at++) hash = Math.imul(hash ^ date.charCodeAt(at), 0x01000193);
  };
  return { take, text: () => (hash >>> 0).toString(16) };
}

export type Spread = { readonly median: number; readonly least: number; readonly most: number };

export function spreadOf(values: readonly number[]): Spread {
  const sorted = values.toSorted((a, b) => a - b);
  const middle = sorted.length / 2;
  const median = ((sorted[Math.ceil(middle) - 1] ?? 0) + (sorted[Math.floor(middle)] ?? 0)) / 2;
  return { median, least: sorted[0] ?? 0, most: sorted.at(-1) ?? 0 };
}

/** How many times slower it was than the other, round by round. */
export function ratiosTo(base: Measured, other: Measured): Spread {
  return spreadOf(other.rounds.map(({ seconds }, round) => seconds / (base.rounds[round]?.seconds ?? Number.NaN)));
}
