/** Builds the dashboard when its sources are newer than the last build. */
import { spawn } from 'node:child_process';
import { createHash } from 'node:crypto';
import { readdir, readFile, writeFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import path from 'node:path';
import { fileURLToPath } from 'node:url';

const DASHBOARD = fileURLToPath(new URL('../../dashboard/', import.meta.url));
export const DASHBOARD_DIST = path.join(DASHBOARD, 'dist');
const BUILT_FROM = path.join(DASHBOARD_DIST, '.built-from');

/** The fingerprint of what a build would read now. */
async function sourcePrint(): Promise<string> {
  const hash = createHash('sha256');
  const files = (await Promise.all(['src', 'public'].map(filesIn))).flat();
  const all = [
    ...files.sort(),
    ...['index.html', 'vite.config.ts', 'package.json'].map((name) => path.join(DASHBOARD, name)),
  ];
  for (const file of all) hash.update(path.relative(DASHBOARD, file)).update(await readFile(file));
  return hash.digest('hex');
}

async function filesIn(folder: string): Promise<string[]> {
  const entries = await readdir(path.join(DASHBOARD, folder), { recursive: true, withFileTypes: true });
  return entries.filter((entry) => entry.isFile()).map((entry) => path.join(entry.parentPath, entry.name));
}

/** `null` when the build is up to date; otherwise the work to be done. */
export async function dashboardBuild(): Promise<(() => Promise<void>) | null> {
  const print = await sourcePrint();
  const built = await readFile(BUILT_FROM, 'utf8').catch(() => '');
  if (built === print) return null;
  return async () => {
    await runVite();
    await writeFile(BUILT_FROM, print);
  };
}

function runVite(): Promise<void> {
  const vite = path.join(
    path.dirname(createRequire(path.join(DASHBOARD, 'package.json')).resolve('vite/package.json')),
    'bin/vite.js',
  );
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [vite, 'build', '--logLevel', 'error'], {
      cwd: DASHBOARD,
      // Started by a test runner, it would otherwise build React's development form and leave it for the next start.
      env: { ...process.env, NODE_ENV: 'production' },
      stdio: ['ignore', 'ignore', 'pipe'],
    });
    let errors = '';
    child.stderr.on('data', (data) => {
      errors += data;
    });
    child.once('error', reject);
    child.once('exit', (code) =>
      code === 0 ? resolve() : reject(new Error(`the dashboard could not be built: ${errors}`)),
    );
  });
}
