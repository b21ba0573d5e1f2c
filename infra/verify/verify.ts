/** `npm run verify`: everything that can be known in seconds, without a database. */
import { spawn } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { checkWalls } from '../walls/check-walls.ts';
import { checkDocsPaths } from './docs-paths.ts';
import { readRepository } from './files.ts';
import { checkShape } from './shape.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** Runs a tool; what it says counts only when it fails. */
function tool(script: string, ...args: string[]): Promise<string[]> {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [`node_modules/${script}`, ...args], { cwd: root });
    const said: Buffer[] = [];
    for (const stream of [child.stdout, child.stderr]) stream.on('data', (chunk: Buffer) => said.push(chunk));
    child.once('error', reject);
    child.once('close', (code) =>
      resolve(code === 0 ? [] : [`${Buffer.concat(said).toString().trim()}\n(exit ${code})`]),
    );
  });
}

/** The compiler keeps what it found, so that the second check of a day takes a second. */
const ONLY_WHAT_CHANGED = ['--incremental', '--tsBuildInfoFile', '.cache/types.tsbuildinfo'];

const files = readRepository(root);
const STEPS: Record<string, () => Promise<string[]> | string[]> = {
  'format and lint': () =>
    tool('@biomejs/biome/bin/biome', 'check', '--config-path', 'infra/biome', '--reporter=concise', '.'),
  types: () => tool('typescript7/bin/tsc', '--noEmit', '--pretty', 'false', ...ONLY_WHAT_CHANGED),
  walls: () => checkWalls(root),
  'unused code': () => tool('knip/bin/knip.js', '--no-progress'),
  'paths in docs': () => checkDocsPaths(root, files),
  shape: () => checkShape(files),
};

async function step(name: string, check: () => Promise<string[]> | string[]): Promise<boolean> {
  const start = performance.now();
  const faults = await check();
  const seconds = ((performance.now() - start) / 1000).toFixed(1).padStart(5);
  console.log(`${faults.length === 0 ? 'ok    ' : 'FAILED'} ${name.padEnd(16)} ${seconds} s`);
  for (const fault of faults) console.log(fault.replaceAll(/^/gm, '       '));
  return faults.length === 0;
}

const results = await Promise.all(Object.entries(STEPS).map(([name, check]) => step(name, check)));
const failed = results.filter((ok) => !ok).length;
console.log(failed === 0 ? 'verified' : `not verified: ${failed} of ${results.length} checks failed`);
process.exitCode = failed === 0 ? 0 : 1;
