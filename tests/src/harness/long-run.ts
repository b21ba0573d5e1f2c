/** docs/long-run.md: when the long run was last made, on what machine, and what it measured. */
import { writeFileSync } from 'node:fs';
import { availableParallelism, cpus, totalmem } from 'node:os';
import type { Figure } from './figures.ts';

const PAGE = new URL('../../../docs/long-run.md', import.meta.url);

export type LongRun = {
  readonly result: string;
  readonly minutes: number;
  readonly database: string;
  readonly browser: string;
};

export function writeLongRun({ result, minutes, database, browser }: LongRun, figures: readonly Figure[]): void {
  const rows = [
    ['date', new Date().toISOString().slice(0, 10)],
    ['result', `${result}, in ${minutes.toFixed(1)} minutes`],
    ['machine', machine()],
    ['Node', process.versions.node],
    ['database', database],
    ['browser', withoutPath(browser)],
    ...figures.map(({ name, value }) => [name, value]),
  ];
  writeFileSync(PAGE, `${HEAD}${rows.map(([name, value]) => `| ${name} | ${value} |\n`).join('')}`);
}

function machine(): string {
  const gigabytes = Math.round(totalmem() / 2 ** 30);
  return `${availableParallelism()} cores (${cpus()[0]?.model.trim() ?? 'unknown'}), ${gigabytes} GB, ${process.platform}-${process.arch}`;
}

const HEAD = `# The last long run

\`npm run test:long\` runs every heavy test in full and writes this page. Figures hold for the machine named here and no other.

| what | last result |
|---|---|
`;

/** Where it lies on this machine is nobody's business: "… (from npm, 153.0.0: /tmp/…)" loses its end. */
function withoutPath(browser: string): string {
  return browser.replace(/: \S*[/\\]\S*\)$/, ')');
}
