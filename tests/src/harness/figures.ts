/** Figures that tests measure, handed from the test processes to the run through a file. */
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';

export type Figure = { readonly name: string; readonly value: string };

/** Begins to collect; what it gives back reads what has come in and ends. */
export function collectFigures(): () => Figure[] {
  const folder = mkdtempSync(path.join(tmpdir(), 'garboard-figures-'));
  const file = path.join(folder, 'figures.jsonl');
  process.env.FIGURES_FILE = file;
  return () => {
    const lines = existsSync(file) ? readFileSync(file, 'utf8').trim().split('\n') : [];
    rmSync(folder, { recursive: true, force: true });
    return lines.map((line) => JSON.parse(line) as Figure).sort((a, b) => a.name.localeCompare(b.name));
  };
}
