/** docs/bench.md: when the bench was last run, on what machine, and what came of it. */
import { writeFileSync } from 'node:fs';
import { availableParallelism, cpus, totalmem } from 'node:os';
import { type Measured, ratiosTo, type Spread, spreadOf } from './measure.ts';

const PAGE = new URL('../../../docs/bench.md', import.meta.url);

export type Bench = {
  readonly count: number;
  readonly rounds: number;
  readonly measured: readonly Measured[];
  readonly checksum: string;
};

export function writeBench(bench: Bench): void {
  const about = [
    ['date', new Date().toISOString().slice(0, 10)],
    ['machine', machine()],
    ['Node', process.versions.node],
    ['items', `${bench.count}, in ${bench.rounds} counted rounds`],
    ['checksum of every date', `${bench.checksum}, the same for all`],
  ];
  const rows = about.map(([name, value]) => `| ${name} | ${value} |\n`).join('');
  writeFileSync(PAGE, `${HEAD}\n| what | last run |\n|---|---|\n${rows}\n${tableOf(bench)}\n${FOOT}`);
}

/** One row for each; the ratios are to the first. */
export function tableOf({ measured, count }: Bench): string {
  const [engine] = measured;
  if (!engine) return '';
  const rows = measured.map((each) => {
    const { contender, rounds } = each;
    const ratio = each === engine ? '1' : inWords(ratiosTo(engine, each), 2);
    const goal = contender.goal === undefined ? '—' : `${contender.goal}: ${verdict(each, engine, contender.goal)}`;
    const rate = inWords(spreadOf(rounds.map(({ seconds }) => count / seconds)), 0);
    const heap = Math.round(spreadOf(rounds.map(({ heapGrowthMb }) => heapGrowthMb)).median);
    const rss = Math.round(Math.max(...rounds.map(({ rssMb }) => rssMb)));
    return `| ${contender.name} | ${rate} | ${ratio} | ${goal} | ${heap} | ${rss} |\n`;
  });
  return `${TABLE}${rows.join('')}`;
}

const TABLE = `| who | items a second | time against the engine's | goal | heap growth, MB | process, MB |
|---|---|---|---|---|---|
`;

function verdict(each: Measured, engine: Measured, goal: number): string {
  return ratiosTo(engine, each).median >= goal ? 'met' : 'missed';
}

/** Median, least and most. */
function inWords({ median, least, most }: Spread, digits: number): string {
  return `${median.toFixed(digits)} (${least.toFixed(digits)}–${most.toFixed(digits)})`;
}

function machine(): string {
  const gigabytes = Math.round(totalmem() / 2 ** 30);
  return `${availableParallelism()} cores (${cpus()[0]?.model.trim() ?? 'unknown'}), ${gigabytes} GB, ${process.platform}-${process.arch}`;
}

const HEAD = `# The rules engine beside date libraries

\`npm run bench\` writes this page; \`npm run bench -- --full\` does it on 600,000 items. Each contender works out every due
date of the same items from the same text to the same text: gas hoses, flares, standing rigging, liferafts and
extinguishers. The rounds alternate, and what is compared is always of the same round: the median, with the least and the
most. Figures hold for the machine named here and no other; the ratios travel better than the rates.
`;

const FOOT = `The libraries' programs know ten clauses by heart and nothing else: which act was done by whom, what was struck out, which
unit is aboard, as at and as known at are not their business, and they give no reasons. The engine reads all of this for
every date and explains it: what binds, what else was counted, what was assumed, what is missing and what would change it.

The goals are those of a prototype that counted day numbers in columns, for one rule an item and without a word of reasoning.
A date here is worked out together with its explanation, and the time is spread: in a profile of 26 November 2026 no function
took a twentieth of it by itself, putting the explanation together took 15 in a hundred, the outcome and its sentence 7, the
memory's upkeep 12. Leaving words out cannot bring the factor that the goals ask for; that needs a second engine for dates
alone, which would have to be kept equal to this one.
`;
