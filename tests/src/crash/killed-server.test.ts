import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { describe, expect, it, onTestFinished } from 'vitest';
import { administer, type GarboardProcess, startGarboardProcess } from '../support/garboard-process.ts';
import { size } from '../support/long.ts';
import { ask } from './ask.ts';

const FACTS = 500;
const ITEMS = 20;

describe('killed in the middle of 500 statements', () => {
  it.each(Array.from({ length: size(1, 5) }, (_, round) => round))(
    'keeps every acknowledged one when the program is killed (round %i)',
    async () => {
      await killAndLookAgain(async (running) => void (await running.end('SIGKILL')));
    },
  );

  it.each(Array.from({ length: size(1, 5) }, (_, round) => round))(
    'keeps every acknowledged one when PostgreSQL is killed too (round %i)',
    async () => {
      await killAndLookAgain(async (running, dataDir) => {
        process.kill(await postmasterPid(dataDir), 'SIGKILL');
        await running.end('SIGKILL');
      });
    },
  );
});

async function killAndLookAgain(kill: (running: GarboardProcess, dataDir: string) => Promise<void>): Promise<void> {
  const dataDir = await mkdtemp(path.join(tmpdir(), 'garboard-crash-'));
  const settings = { DATA_DIR: dataDir, DEMO: 'no' };
  onTestFinished(() => rm(dataDir, { recursive: true, force: true }));
  const first = await startGarboardProcess(settings);
  await administer(settings, 'create-organisation', 'Crash Harbour');
  const key = await administer(settings, 'create-api-key', '--organisation', 'Crash Harbour', '--role', 'manager');
  const items = await layOut(first.address, key);

  const acknowledged: string[] = [];
  const killAt = FACTS / 4;
  let killing: Promise<void> | undefined;
  const posts = Array.from({ length: FACTS }, (_, n) =>
    post(first.address, key, `/v1/items/${items[n % ITEMS]}/facts`, factNumber(n)).then(
      ({ fact }) => {
        acknowledged.push(fact.id);
        if (acknowledged.length === killAt) killing = kill(first, dataDir);
      },
      () => {},
    ),
  );
  await Promise.all(posts);
  await killing;
  expect(acknowledged.length).toBeGreaterThanOrEqual(killAt);
  expect(acknowledged.length).toBeLessThan(FACTS);

  const second = await startGarboardProcess(settings);
  onTestFinished(async () => void (second.process.exitCode === null && (await second.end('SIGTERM'))));
  const kept = new Set((await Promise.all(items.map((item) => factIds(second.address, key, item)))).flat());
  expect(acknowledged.filter((id) => !kept.has(id))).toEqual([]);
  expect(await administer(settings, 'check')).toMatch(
    /^Crash Harbour: audit of \d+ rows is whole, head \d+:[0-9a-f]{64}\n1 vessels, 0 obligations differed, 0 findings differed, 0 day counts differed\n0 files, 0 missing$/,
  );
  expect(await second.end('SIGTERM')).toBe(0);
}

async function layOut(address: string, key: string): Promise<string[]> {
  const vessel = await post(address, key, '/v1/vessels', { name: 'Tern', schemes: ['solas'] });
  const items: string[] = [];
  for (let n = 0; n < ITEMS; n++) {
    const { id } = await post(address, key, `/v1/vessels/${vessel.id}/items`, { kind: 'gas_hose', label: `Hose ${n}` });
    items.push(id);
  }
  return items;
}

const factNumber = (n: number) => ({
  fact: 'inspected',
  on: `${2000 + (n % 25)}-0${1 + (n % 9)}-1${n % 10}`,
  evidence: 'record',
});

const post = (address: string, key: string, path: string, body: unknown) =>
  ask<{ id: string; fact: { id: string } }>(address, key, ['POST', path], body);

async function factIds(address: string, key: string, itemId: string): Promise<string[]> {
  const response = await fetch(`${address}/v1/items/${itemId}/facts?limit=200`, {
    headers: { authorization: `Bearer ${key}` },
  });
  const { items } = (await response.json()) as { items: { id: string }[] };
  return items.map(({ id }) => id);
}

async function postmasterPid(dataDir: string): Promise<number> {
  const [pid] = (await readFile(path.join(dataDir, 'pg', 'postmaster.pid'), 'utf8')).split('\n');
  return Number(pid);
}
