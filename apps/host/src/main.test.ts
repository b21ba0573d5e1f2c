import { once } from 'node:events';
import { mkdtemp, readdir, rm } from 'node:fs/promises';
import type { AddressInfo } from 'node:net';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { garboardThatEnds } from '@garboard/tests/support/garboard-process.ts';
import { describe, expect, it, onTestFinished } from 'vitest';

async function dataFolder(): Promise<string> {
  const dir = await mkdtemp(path.join(tmpdir(), 'garboard-start-'));
  onTestFinished(() => rm(dir, { recursive: true, force: true }));
  return dir;
}

/** The embedded server's note of who uses it is gone when it has been stopped. */
async function isStopped(dataDir: string): Promise<boolean> {
  return !(await readdir(dataDir)).includes('pg.json');
}

describe('a start that comes to nothing', { timeout: 120_000 }, () => {
  it('says that the port is taken, stops what it had started and ends with 1', async () => {
    const other = createServer().listen(0, '127.0.0.1');
    await once(other, 'listening');
    onTestFinished(() => void other.close());
    const { port } = other.address() as AddressInfo;
    const dataDir = await dataFolder();

    const { code, output } = await garboardThatEnds({ DATA_DIR: dataDir, DEMO: 'no', PORT: String(port) });

    expect(output).toContain(`port ${port} is taken`);
    expect(output).not.toContain('ECONNREFUSED');
    expect(code).toBe(1);
    expect(await isStopped(dataDir)).toBe(true);
  });

  it('breaks off laying out the demo fleets when it is told to stop', async () => {
    const dataDir = await dataFolder();

    const { code, output } = await garboardThatEnds({ DATA_DIR: dataDir, DEMO: 'yes' }, 'Laying out');

    expect(output).toContain('Stopped.');
    expect(output).not.toContain('Ready at');
    expect(code).toBe(0);
    expect(await isStopped(dataDir)).toBe(true);
  });
});
