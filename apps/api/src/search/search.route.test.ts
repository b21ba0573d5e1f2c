import type { Problem } from '@garboard/contract/problem.ts';
import type { SearchAnswer } from '@garboard/contract/search/search.ts';
import { inOrganisation } from '@garboard/db/scope.ts';
import { findItems, findVessels } from '@garboard/db/search/find-by-words.ts';
import { signedIn } from '@garboard/tests/support/api.ts';
import { pools } from '@garboard/tests/support/database.ts';
import { aVessel } from '@garboard/tests/support/vessels.ts';
import { describe, expect, it } from 'vitest';

async function twoBoats() {
  const owner = await signedIn();
  const ctx = owner.organisation.ctx();
  const kittiwake = await aVessel(ctx, ['solas'], 'Kittiwake', {
    identifiers: { mmsi: '232123456', callSign: 'MABC2' },
  });
  const petrel = await aVessel(ctx, [], 'Storm Petrel', { type: 'sloop', homePort: 'Ærøskøbing' });
  const put = async (vesselId: string, item: object) =>
    (await owner.post<{ id: string }>(`/v1/vessels/${vesselId}/items`, item)).body.id;
  const raft = await put(kittiwake.id, { kind: 'liferaft', label: 'Raft, 8 persons', serialNumber: 'RFD-4471/B' });
  await put(petrel.id, { kind: 'liferaft', label: 'Raft, 6 persons', maker: 'Skerry' });
  const ask = async (q: string) => (await owner.get<SearchAnswer>(`/v1/search?q=${encodeURIComponent(q)}`)).body;
  return { owner, ctx, kittiwake, petrel, raft, ask };
}
const vessels = (answer: SearchAnswer) => answer.vessels.map(({ name }) => name);
const things = (answer: SearchAnswer) => answer.things.map(({ label, vessel }) => `${label}: ${vessel.name}`);

describe('GET /v1/search', () => {
  it.each(['kitti', 'KITTIWAKE', 'mabc2', '232123'])('finds a vessel by the beginning of a word: %s', async (q) => {
    expect(vessels(await (await twoBoats()).ask(q))).toEqual(['Kittiwake']);
  });

  it.each(['storm pet', 'petrel storm', 'ærøsk', 'slo'])('in any order, in any alphabet: %s', async (q) => {
    expect(vessels(await (await twoBoats()).ask(q))).toEqual(['Storm Petrel']);
  });

  it.each(['4471', 'RFD-4471', 'rfd4471', 'rfd 4471 b'])('finds a thing by its serial number: %s', async (q) => {
    expect(things(await (await twoBoats()).ask(q))).toEqual(['Raft, 8 persons: Kittiwake']);
  });

  it('tells things of one name apart by their vessel', async () => {
    const { ask } = await twoBoats();

    expect(things(await ask('raft'))).toEqual(['Raft, 6 persons: Storm Petrel', 'Raft, 8 persons: Kittiwake']);
    expect(things(await ask('raft kitti'))).toEqual(['Raft, 8 persons: Kittiwake']);
    expect(things(await ask('kittiwake'))).toEqual([]);
  });

  it('finds a rule by what it asks and where it stands', async () => {
    const { rules } = await (await twoBoats()).ask('solas III/20.8.1');

    expect(rules.map(({ id }) => id)).toContain('raft-solas');
  });

  it('follows a change of name at once', async () => {
    const { owner, kittiwake, ask } = await twoBoats();
    await owner.patch(`/v1/vessels/${kittiwake.id}`, { name: 'Fulmar' }, { 'if-match': '"1"' });

    expect([vessels(await ask('kittiwake')), vessels(await ask('fulmar'))]).toEqual([[], ['Fulmar']]);
    expect(things(await ask('raft fulmar'))).toEqual(['Raft, 8 persons: Fulmar']);
  });

  it('says what is taken out of use, after what is not', async () => {
    const { owner, raft, ask } = await twoBoats();
    await owner.post(`/v1/items/${raft}/facts`, { fact: 'withdrawn', on: '2026-11-01' });

    expect((await ask('raft')).things.map(({ withdrawn }) => withdrawn)).toEqual([false, true]);
  });

  it('is narrowed to the vessels that somebody may see, and to their organisation', async () => {
    const { ctx, petrel } = await twoBoats();
    const narrow = { organisationId: ctx.organisationId, vesselIds: [petrel.id] };

    const seen = await inOrganisation(pools.app, narrow, async (tx) => [
      ...(await findVessels(tx, 'kittiwake', 9)),
      ...(await findItems(tx, 'raft', 9)),
    ]);

    expect(seen.map((each) => ('vesselName' in each ? each.vesselName : each.name))).toEqual(['Storm Petrel']);
    const elsewhere = await (await signedIn()).get<SearchAnswer>('/v1/search?q=raft');
    expect([elsewhere.body.vessels, elsewhere.body.things]).toEqual([[], []]);
  });

  it('gives no more of each than is asked for', async () => {
    const { owner } = await twoBoats();

    const { body } = await owner.get<SearchAnswer>('/v1/search?q=raft&limit=1');

    expect([body.things.length, body.rules.length]).toEqual([1, 1]);
  });

  it.each(['%', '_', "'", '\\', '(', '& |'])('answers with nothing to what has no word in it: %s', async (q) => {
    expect(await (await twoBoats()).ask(q)).toEqual({ vessels: [], things: [], rules: [] });
  });

  it.each(['', '?q=', '?q=%20', '?q=%00', `?q=${'x'.repeat(81)}`])(
    'refuses no words, far too many, and what is none: %s',
    async (query) => {
      const { status, body } = await (await signedIn()).get<Problem>(`/v1/search${query}`);

      expect([status, body.errors?.map(({ pointer }) => pointer)]).toEqual([422, ['#query/q']]);
    },
  );
});
