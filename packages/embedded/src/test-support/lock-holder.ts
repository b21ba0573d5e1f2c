/** A program that takes a lock, holds it for so many milliseconds, and says from when to when it had it. */
import { setTimeout as sleep } from 'node:timers/promises';
import { withStarterLock } from '../starter-lock.ts';

const [file = '', holdMs = '0'] = process.argv.slice(2);

await withStarterLock(file, 60_000, async () => {
  const from = performance.timeOrigin + performance.now();
  if (Number(holdMs) > 1000) console.log('held');
  await sleep(Number(holdMs));
  console.log(from, performance.timeOrigin + performance.now());
});
