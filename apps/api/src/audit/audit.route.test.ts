import { createHash } from 'node:crypto';
import { changeVessel } from '@garboard/actions/vessel/change-vessel.ts';
import type { AuditPage } from '@garboard/contract/audit/audit.ts';
import { app, type Client, document, signedIn, type Told } from '@garboard/tests/support/api.ts';
import { anItem, aVessel, state } from '@garboard/tests/support/vessels.ts';
import { describe, expect, it } from 'vitest';

/** A vessel with a hose that was inspected, and then given another rig by a key. */
async function aStory() {
  const owner = await signedIn();
  const ctx = owner.organisation.ctx();
  const vessel = await aVessel(ctx, [], 'Marsh Harrier', { rig: 'sloop' });
  const { item } = await anItem(ctx, vessel.id, 'gas_hose', 'Hose to the cooker');
  await state(ctx, item.id, { fact: 'inspected', on: '2026-05-10' });
  await owner.patch(`/v1/vessels/${vessel.id}`, { rig: 'ketch' }, { 'if-match': '"1"', 'x-request-id': 'change-17' });
  return { owner, ctx, vessel, item };
}

/** RFC 8785 for what has been through JSON already: names in the order of their code units, no white space. */
function canonical(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(canonical).join(',')}]`;
  if (typeof value !== 'object' || value === null) return JSON.stringify(value);
  const names = Object.keys(value).sort();
  return `{${names.map((name) => `${JSON.stringify(name)}:${canonical((value as Record<string, unknown>)[name])}`).join(',')}}`;
}

const read = async (client: Client, query = '') => (await client.get<AuditPage>(`/v1/audit${query}`)).body.items;

describe('GET /v1/audit', () => {
  it('says who did what to which thing, by which key and request, with what was and what is since', async () => {
    const { owner, vessel } = await aStory();

    const [latest] = await read(owner, '?verb=change_vessel');

    expect(latest).toMatchObject({
      actor: { kind: 'api_key', name: 'test' },
      credential: expect.stringMatching(/^api_key:/),
      role: 'owner',
      requestId: 'change-17',
      verb: 'change_vessel',
      subject: 'vessel',
      subjectId: vessel.id,
      before: { rig: 'sloop' },
      after: { rig: 'ketch' },
      about: { vesselId: vessel.id, vesselName: 'Marsh Harrier' },
      sequence: 6,
    });
  });

  it('names the vessel and the thing that a statement is about', async () => {
    const { owner, vessel, item } = await aStory();

    const [fact] = await read(owner, '?subject=fact');

    expect(fact?.about).toEqual({
      vesselId: vessel.id,
      vesselName: 'Marsh Harrier',
      itemId: item.id,
      itemLabel: 'Hose to the cooker',
    });
  });

  it('tells of one vessel all that concerns her and what is aboard, and nothing of another', async () => {
    const { owner, ctx, vessel, item } = await aStory();
    const other = await aVessel(ctx, [], 'Avocet', {});
    await anItem(ctx, other.id, 'gas_hose');

    const told = await read(owner, `?vesselId=${vessel.id}`);

    expect(told.map(({ verb }) => verb)).toEqual(['change_vessel', 'record_fact', 'add_item', 'create_vessel']);
    expect(new Set(told.map(({ about }) => about.vesselId))).toEqual(new Set([vessel.id]));
    expect(told.some(({ about }) => about.itemId === item.id)).toBe(true);
  });

  it('takes filters together: the thing, who, how, and the days in the organisation’s own zone', async () => {
    const { owner, ctx, vessel } = await aStory();
    const at = (text: string) => ({ ...ctx, now: new Date(text) });
    const rename = (text: string, version: number) =>
      changeVessel(at(text), { vesselId: vessel.id, expectedVersion: version, change: { name: text } });
    await rename('2026-11-26T23:59:59.000Z', 2);
    await rename('2026-11-27T00:00:00.000Z', 3);
    const count = async (query: string) => (await read(owner, query)).length;

    expect(await count(`?subjectId=${vessel.id}`)).toBe(4);
    expect(await count(`?subjectId=${vessel.id}&from=2026-11-26`)).toBe(2);
    expect(await count(`?subjectId=${vessel.id}&from=2026-11-26&to=2026-11-26`)).toBe(1);
    expect(await count(`?actor=person:${ctx.actor.id}&verb=change_vessel`)).toBe(2);
    expect(await count('?verb=no_such_verb')).toBe(0);
  });

  it('comes in pages, each row once, the latest first', async () => {
    const { owner } = await aStory();
    const seen: string[] = [];
    for (let path: string | null = '/v1/audit?limit=2'; path; ) {
      const { body }: Told<AuditPage> = await owner.get<AuditPage>(path);
      seen.push(...body.items.map(({ id }) => id));
      path = body.nextCursor && `/v1/audit?limit=2&cursor=${body.nextCursor}`;
    }

    expect(seen).toEqual([...new Set(seen)].sort().reverse());
    expect(seen.length).toBe((await read(owner)).length);
  });

  it.each(['?subject=Vessel', '?subjectId=7', '?actor=anna', '?from=yesterday', '?verb=', '?who=me', '?cursor=x'])(
    'refuses %s',
    async (query) => {
      const { status } = await (await signedIn()).get(`/v1/audit${query}`);

      expect(status).toBe(422);
    },
  );

  it('shows nothing of another organisation', async () => {
    const { vessel } = await aStory();
    const stranger = await signedIn();

    expect(await read(stranger, `?subjectId=${vessel.id}`)).toEqual([]);
  });
});

describe('GET /v1/audit/export', () => {
  it('gives the whole chain, which whoever has it can check with nothing of ours', async () => {
    const { owner } = await aStory();
    await owner.post('/v1/vessels', { name: 'Ærø "quoted"\nline €', timeZone: 'UTC', displacementKg: 1234.5678 });

    const { text, headers } = await owner.get('/v1/audit/export');

    expect(headers.get('content-type')).toBe('application/x-ndjson');
    const rows = text
      .trimEnd()
      .split('\n')
      .map((line) => JSON.parse(line));
    let previous = '0'.repeat(64);
    for (const [at, { hash, ...content }] of rows.entries()) {
      expect([content.sequence, content.previous]).toEqual([at + 1, previous]);
      expect(createHash('sha256').update(canonical(content)).digest('hex')).toBe(hash);
      previous = hash;
    }
    expect(rows.length).toBe((await read(owner)).length);
  });

  it('goes on after a row', async () => {
    const { owner } = await aStory();

    const { text } = await owner.get('/v1/audit/export?after=4');

    expect(
      text
        .trimEnd()
        .split('\n')
        .map((line) => JSON.parse(line).sequence),
    ).toEqual([5, 6]);
    expect((await owner.get('/v1/audit/export?after=999')).text).toBe('');
  });

  it('is long without being held in memory or holding a connection: it comes batch by batch', async () => {
    const { owner, vessel } = await aStory();
    const rows = Array.from({ length: 60 }, (_, at) => ({ kind: 'gas_hose', label: `Hose ${at}` }));
    for (let round = 0; round < 10; round += 1)
      await owner.post(`/v1/vessels/${vessel.id}/items/batch`, { items: rows });

    const response = await app.request('/v1/audit/export', {
      headers: { authorization: `Bearer ${await owner.organisation.key()}` },
    });
    const reader = (response.body as ReadableStream<Uint8Array>).getReader();
    const pieces: number[] = [];
    for (let piece = await reader.read(); !piece.done; piece = await reader.read())
      pieces.push(new TextDecoder().decode(piece.value).trimEnd().split('\n').length);

    expect(pieces.length).toBe(2);
    expect(pieces.reduce((sum, n) => sum + n)).toBe(
      (await owner.get('/v1/audit/export')).text.trimEnd().split('\n').length,
    );
  });
});

it('is declared for owners and managers, and says so to everybody else', async () => {
  const surveyor = await (await signedIn()).as('surveyor');

  expect((await surveyor.get('/v1/audit')).status).toBe(403);
  expect(document.paths['/v1/audit']?.get?.responses).toHaveProperty('403');
});
