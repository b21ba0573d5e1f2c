/**
 * Several programs write to one fleet at once. What was acknowledged is there, what was refused left no trace, and
 * nobody's change is written over by somebody who had not seen it.
 */

import { everyPage } from '@garboard/client/client.ts';
import type { AuditPage } from '@garboard/contract/audit/audit.ts';
import type { FactPage } from '@garboard/contract/item/fact.ts';
import type { Item } from '@garboard/contract/item/item.ts';
import type { RecordedFact } from '@garboard/contract/item/recorded-fact.ts';
import type { Vessel } from '@garboard/contract/vessel/vessel.ts';
import { describe, expect, it } from 'vitest';
import { type Client, signedIn, type Told } from '../support/api.ts';
import { reportFigure, size } from '../support/long.ts';
import { random } from '../support/random.ts';
import { anItem, aVessel } from '../support/vessels.ts';

const MINUTE = 60_000;
const WORKERS = 8;
const WRITES = size(400, 20_000);
const POSTS = size(60, 1000);

type Thing = { readonly path: string; readonly field: 'homePort' | 'zone'; version: number };
type Write = {
  readonly path: string;
  readonly said: string;
  readonly seen: number;
  readonly told: Told<Vessel | Item>;
};

async function aSmallFleet() {
  const owner = await signedIn();
  const ctx = owner.organisation.ctx();
  const things: Thing[] = [];
  for (const name of ['Teal', 'Wigeon', 'Pintail']) {
    const vessel = await aVessel(ctx, ['solas'], name);
    const { item } = await anItem(ctx, vessel.id, 'liferaft');
    things.push({ path: `/v1/vessels/${vessel.id}`, field: 'homePort', version: vessel.version });
    things.push({ path: `/v1/items/${item.id}`, field: 'zone', version: item.version });
  }
  return { owner, things };
}

/** Changes what it finds, by the version that it saw last; what others did meanwhile it learns from a refusal. */
async function work(client: Client, things: readonly Thing[], worker: number, count: number): Promise<Write[]> {
  const next = random(7 * worker + 1);
  const seen = new Map(things.map(({ path, version }) => [path, version]));
  const writes: Write[] = [];
  for (let turn = 0; turn < count; turn++) {
    const { path, field } = things[next(things.length)] as Thing;
    const said = `place ${worker}-${turn}`;
    const by = seen.get(path) ?? 0;
    const told = await client.patch<Vessel | Item>(path, { [field]: said }, { 'if-match': `"${by}"` });
    const version = Number(told.headers.get('etag')?.replaceAll('"', ''));
    if (version > 0) seen.set(path, version);
    writes.push({ path, said, seen: by, told });
  }
  return writes;
}

describe('many writers of one fleet', { timeout: 30 * MINUTE }, () => {
  it('lose no change: each version was given once, the last stands, and a refusal left nothing', async () => {
    const { owner, things } = await aSmallFleet();

    const all = await Promise.all(
      Array.from({ length: WORKERS }, (_, worker) => work(owner, things, worker, WRITES / WORKERS)),
    );

    const writes = all.flat();
    const refused = writes.filter(({ told }) => told.status !== 200);
    expect(new Set(refused.map(({ told }) => told.status))).toEqual(new Set([412]));
    expect(refused.length).toBeGreaterThan(WORKERS);
    for (const { path, field, version } of things) {
      const done = writes.filter((write) => write.path === path && write.told.status === 200);
      const versions = done.map(({ told }) => told.body.version).sort((a, b) => a - b);
      expect(versions).toEqual(done.map((_, at) => version + at + 1));
      expect(done.filter(({ told, seen }) => told.body.version !== seen + 1)).toEqual([]);
      const last = done.find(({ told }) => told.body.version === versions.at(-1));
      expect((await owner.get<Record<string, unknown>>(path)).body[field]).toBe(last?.said);
    }
    const kept = JSON.stringify(await auditOf(owner));
    expect(writes.filter(({ told, said }) => kept.includes(`"${said}"`) !== (told.status === 200))).toEqual([]);
    reportFigure('writes by eight at once: all, refused for an old version', `${writes.length}, ${refused.length}`);
  });

  it('repeat themselves up to five times at once, and each request has one effect and one answer', async () => {
    const owner = await signedIn();
    const ctx = owner.organisation.ctx();
    const { item } = await anItem(ctx, (await aVessel(ctx)).id, 'gas_hose');
    const next = random(11);
    const repeats = Array.from({ length: POSTS }, () => 1 + next(5));

    for (let from = 0; from < POSTS; from += WORKERS)
      await Promise.all(
        repeats.slice(from, from + WORKERS).map(async (times, at) => {
          const number = from + at;
          const post = () =>
            owner.post<RecordedFact>(
              `/v1/items/${item.id}/facts`,
              { fact: 'inspected', on: '2026-03-01', note: `look ${number}` },
              { 'idempotency-key': `look-${number}` },
            );
          const answers = await Promise.all(Array.from({ length: times }, post));
          expect(new Set(answers.map(({ status, text }) => `${status} ${text}`)).size).toBe(1);
          expect(answers[0]?.status).toBe(201);
        }),
      );

    const facts = await everyPage(async (cursor) => {
      const after = cursor === undefined ? '' : `&cursor=${cursor}`;
      return (await owner.get<FactPage>(`/v1/items/${item.id}/facts?limit=200${after}`)).body;
    });
    const looks = facts.map(({ note }) => note).sort();
    expect(looks).toEqual(repeats.map((_, number) => `look ${number}`).sort());
  });
});

async function auditOf(owner: Client): Promise<AuditPage['items']> {
  return everyPage(async (cursor) => {
    const after = cursor === undefined ? '' : `&cursor=${cursor}`;
    return (await owner.get<AuditPage>(`/v1/audit?limit=200${after}`)).body;
  });
}
