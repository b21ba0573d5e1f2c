import { spawn } from 'node:child_process';
import { once } from 'node:events';
import path from 'node:path';
import readline from 'node:readline';
import { fileURLToPath } from 'node:url';
import { expect, test, vi } from 'vitest';
import { withStarterLock } from './starter-lock.ts';
import { newFolder } from './test-support/data-folders.ts';

vi.setConfig({ testTimeout: 60_000 });

const HOLDER = fileURLToPath(new URL('./test-support/lock-holder.ts', import.meta.url));

test('a holder killed -9 frees the lock for exactly one waiter at a time', async () => {
  const file = path.join(newFolder(), 'pg.lock');
  const killed = spawn(process.execPath, [HOLDER, file, '60000'], { stdio: ['ignore', 'pipe', 'inherit'] });
  await once(readline.createInterface({ input: killed.stdout }), 'line');
  const waiters = [1, 2, 3, 4].map(() =>
    spawn(process.execPath, [HOLDER, file, '30'], { stdio: ['ignore', 'pipe', 'inherit'] }),
  );
  const said: string[] = [];
  for (const { stdout } of waiters) readline.createInterface({ input: stdout }).on('line', (line) => said.push(line));
  await new Promise((resolve) => setTimeout(resolve, 300));
  expect(said).toEqual([]);

  killed.kill('SIGKILL');
  await Promise.all(waiters.map((waiter) => once(waiter, 'close')));
  const spans = said.map((line) => line.split(' ').map(Number)).sort(([a = 0], [b = 0]) => a - b);
  expect(spans).toHaveLength(4);
  for (const [index, [from = 0]] of spans.entries()) expect(from).toBeGreaterThanOrEqual(spans[index - 1]?.[1] ?? 0);
});

test('the lock is free again after work that failed', async () => {
  const file = path.join(newFolder(), 'pg.lock');
  const fails = withStarterLock(file, 1000, () => Promise.reject(new Error('broken')));
  await expect(fails).rejects.toThrow('broken');
  expect(await withStarterLock(file, 1000, async () => 'done')).toBe('done');
});

test('whoever waits too long is told so', async () => {
  const file = path.join(newFolder(), 'pg.lock');
  await withStarterLock(file, 1000, async () => {
    await expect(withStarterLock(file, 100, async () => 'done')).rejects.toThrow(/Another process .*pg\.lock/);
  });
});
