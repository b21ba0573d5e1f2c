/** docs/bench.md: when the bench was last run, on what machine, and what came of it. */
import { writeFileSync } from 'node:fs';
import { availableParallelism, cpus, totalmem } from 'node:os';
import { type Measured, ratiosTo, type Spread, spreadOf } from './measure.ts';

const PAGE = new URL('../../../docs/bench.md', import.meta.url);

export type Bench = {
  readonly count: number;
  readonly rounds: number;
  readonly checksum: string;
  /** From the contenders' own dates to their own dates, and from stored rows to text. */
  readonly alone: readonly Measured[];
  readonly withText: readonly Measured[];
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
  const [alone, withText] = [bench.alone, bench.withText].map((measured) => tableOf(bench.count, measured));
  const figures = `| what | last run |\n|---|---|\n${rows}`;
  writeFileSync(PAGE, `${HEAD}\n${figures}\n${ALONE}\n${alone}\n${WITH_TEXT}\n${withText}\n${FOOT}`);
}

/** One row for each; the ratios are to the first. */
export function tableOf(count: number, measured: readonly Measured[]): string {
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

const TABLE = `| who | items a second | time against the first | goal | heap growth, MB | process, MB |
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
date of the same items: gas hoses, flares, standing rigging, liferafts and extinguishers, two dates an item. The rounds
alternate, and what is compared is always of the same round: the median, with the least and the most. Before each turn the
memory is swept, and some turns that are not counted let the compiler learn its work again. Every date is checked against
those of the others. Figures hold for the machine named here and no other; the ratios travel better than the rates.
`;

const ALONE = `## The rules alone

From each contender's own dates to its own dates: day numbers in columns here, the libraries' objects there. Text is read
before and written afterwards, off the clock.
`;

const WITH_TEXT = `## From stored rows to text

Everything that lies between the database and an answer: reading ISO text, the rules, writing ISO text. The explaining
engine is what the API answers with; its time holds the reasoning of every date besides.
`;

const FOOT = `The libraries' programs know ten clauses by heart and nothing else: which act was done by whom, what was struck out, which
unit is aboard, as at and as known at are not their business, and they give no reasons. The compiled rules read all of that
for every date. They give no reasons either: they are the second reckoning of every night's check, and of \`npm run admin --
check\`, beside the explaining engine (decision 19). With text around them they spend two thirds of their time on reading
and writing it, and on words that become numbers.
`;
