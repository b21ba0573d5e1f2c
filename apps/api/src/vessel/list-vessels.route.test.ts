import type { Problem } from '@garboard/contract/problem.ts';
import type { VesselPage } from '@garboard/contract/vessel/vessel.ts';
import { signedIn, type Told } from '@garboard/tests/support/api.ts';
import { aVessel } from '@garboard/tests/support/vessels.ts';
import { describe, expect, it } from 'vitest';

async function aFleet(...names: readonly string[]) {
  const owner = await signedIn();
  for (const name of names) await aVessel(owner.organisation.ctx(), [], name);
  return owner;
}

const nextOf = (headers: Headers) => /^<([^>]+)>; rel="next"$/.exec(headers.get('link') ?? '')?.[1] ?? null;

describe('GET /v1/vessels', () => {
  it('gives each vessel once, by name, page after page', async () => {
    const owner = await aFleet('Snipe', 'Dunlin', 'Knot', 'Knot', 'Ruff');
    const seen: string[][] = [];

    let path: string | null = '/v1/vessels?limit=2';
    while (path !== null) {
      const told: Told<VesselPage> = await owner.get<VesselPage>(path);
      seen.push(told.body.items.map(({ name }) => name));
      path = nextOf(told.headers);
      expect(path === null).toBe(told.body.nextCursor === null);
    }

    expect(seen).toEqual([['Dunlin', 'Knot'], ['Knot', 'Ruff'], ['Snipe']]);
  });

  it('ends where the last page is full', async () => {
    const owner = await aFleet('Dunlin', 'Knot');

    expect((await owner.get<VesselPage>('/v1/vessels?limit=2')).body.nextCursor).toBeNull();
  });

  it('goes on after the last one seen when a vessel was added before it', async () => {
    const owner = await aFleet('Dunlin', 'Knot', 'Ruff');
    const { body } = await owner.get<VesselPage>('/v1/vessels?limit=2');
    await aVessel(owner.organisation.ctx(), [], 'Curlew');

    const { body: next } = await owner.get<VesselPage>(`/v1/vessels?limit=2&cursor=${body.nextCursor}`);

    expect(next.items.map(({ name }) => name)).toEqual(['Ruff']);
  });

  it('shows nobody else’s vessels', async () => {
    await aFleet('Dunlin');
    const other = await signedIn();

    expect((await other.get<VesselPage>('/v1/vessels')).body.items).toEqual([]);
  });

  it.each(['limit=', 'limit=0', 'limit=201', 'limit=1.5', 'limit=1&limit=2', 'limit=2e1'])(
    'refuses ?%s',
    async (query) => {
      const owner = await signedIn();

      const { status, body } = await owner.get<Problem>(`/v1/vessels?${query}`);

      expect(status).toBe(422);
      expect(body.errors?.map(({ pointer }) => pointer)).toEqual(['#query/limit']);
    },
  );

  it('refuses a parameter that it does not know', async () => {
    const owner = await signedIn();

    const { body } = await owner.get<Problem>('/v1/vessels?name=Knot');

    expect(body.errors).toEqual([{ pointer: '#query/name', detail: 'cannot be given here' }]);
  });

  it.each(['x', 'eyJhIjoxfQ', `${Buffer.from('["bm9uZQ", {"name": "a"}]').toString('base64url')}`])(
    'refuses a cursor that is none of its own: %s',
    async (cursor) => {
      const owner = await signedIn();

      const { status, body } = await owner.get<Problem>(`/v1/vessels?cursor=${cursor}`);

      expect(status).toBe(422);
      expect(body.errors?.map(({ pointer }) => pointer)).toEqual(['#query/cursor']);
    },
  );
});
