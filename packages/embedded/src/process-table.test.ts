import { spawn } from 'node:child_process';
import { once } from 'node:events';
import fs from 'node:fs';
import { expect, onTestFinished, test } from 'vitest';
import { commandLine, isRunning, markOf } from './process-table.ts';
import { unless, until } from './test-support/data-folders.ts';

const onLinux = process.platform === 'linux';

test('a process is running until it has ended, and its pid in other hands is not that process', async () => {
  const child = spawn('sleep', ['60']);
  const mark = markOf(child.pid ?? 0);
  if (!mark) throw new Error('no such process');
  expect(isRunning(mark)).toBe(true);
  expect(commandLine(mark.pid)).toMatch(/sleep 60/);
  if (onLinux) expect(isRunning({ ...mark, startedAt: 'another time' })).toBe(false);
  child.kill();
  await once(child, 'exit');
  expect(isRunning(mark)).toBe(false);
  expect(markOf(mark.pid)).toBeNull();
});

test.skipIf(!onLinux)(
  unless(onLinux, 'reads /proc', 'a process that has ended but was not buried counts as ended'),
  async () => {
    // the shell starts a child, says its number, and becomes a sleep that never asks after it
    const parent = spawn('sh', ['-c', 'sleep 0.2 & echo $!; exec sleep 60'], { stdio: ['ignore', 'pipe', 'inherit'] });
    onTestFinished(() => void parent.kill());
    const [number] = await once(parent.stdout, 'data');
    const pid = Number(number);
    await until('the child has ended', () => markOf(pid) === null);
    expect(fs.existsSync(`/proc/${pid}`)).toBe(true);
  },
);
