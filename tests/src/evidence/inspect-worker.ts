/** Looks at each file of a folder in a process of its own, and says what came of it, how long it took and what it cost. */
import { readdir, readFile } from 'node:fs/promises';
import path from 'node:path';
import { inspect } from '@garboard/blobs/evidence/inspect.ts';

const [folder = ''] = process.argv.slice(2);

export type Verdict = { readonly file: string; readonly kind: string; readonly because: string; readonly ms: number };
export type Report = { readonly verdicts: readonly Verdict[]; readonly maxRssMiB: number };

const verdicts: Verdict[] = [];
for (const file of (await readdir(folder)).sort()) {
  const bytes = await readFile(path.join(folder, file));
  const began = performance.now();
  const found = await inspect(bytes);
  const because = found.kind === 'refused' ? found.because : '';
  verdicts.push({ file, kind: found.kind, because, ms: performance.now() - began });
}
const report: Report = { verdicts, maxRssMiB: process.resourceUsage().maxRSS / 1024 };
process.stdout.write(JSON.stringify(report));
