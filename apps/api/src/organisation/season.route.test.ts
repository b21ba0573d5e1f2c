import type { Fleet } from '@garboard/contract/fleet/fleet.ts';
import type { OwnSeason } from '@garboard/contract/organisation/season.ts';
import type { Problem } from '@garboard/contract/problem.ts';
import { signedIn } from '@garboard/tests/support/api.ts';
import { describe, expect, it } from 'vitest';

const SUMMER = { season: { from: '04-01', to: '10-15' } };
const VERSION = (version: number) => ({ 'if-match': `"${version}"` });

describe('the season', () => {
  it('is nothing until it is said, and then stands on the fleet too', async () => {
    const owner = await signedIn();
    const before = await owner.get<OwnSeason>('/v1/season');
    expect([before.body, before.headers.get('etag')]).toEqual([{ season: null }, '"1"']);

    const set = await owner.put<OwnSeason>('/v1/season', SUMMER, VERSION(1));

    expect([set.status, set.headers.get('etag'), set.body]).toEqual([200, '"2"', SUMMER]);
    expect((await owner.get<OwnSeason>('/v1/season')).body).toEqual(SUMMER);
    expect((await owner.get<Fleet>('/v1/fleet')).body.season).toEqual(SUMMER.season);
    expect((await (await signedIn()).get<OwnSeason>('/v1/season')).body).toEqual({ season: null });
  });

  it('may run over the turn of the year, and be taken back', async () => {
    const owner = await signedIn();

    expect((await owner.put('/v1/season', { season: { from: '11-01', to: '03-31' } }, VERSION(1))).status).toBe(200);
    expect((await owner.put<OwnSeason>('/v1/season', { season: null }, VERSION(2))).body).toEqual({ season: null });
  });

  it('is written only over the version that was read', async () => {
    const owner = await signedIn();
    await owner.put('/v1/season', SUMMER, VERSION(1));

    const late = await owner.put<Problem>('/v1/season', { season: null }, VERSION(1));
    const blind = await owner.put<Problem>('/v1/season', { season: null });

    expect([late.status, late.headers.get('etag'), blind.status]).toEqual([412, '"2"', 428]);
    expect((await owner.get<OwnSeason>('/v1/season')).body).toEqual(SUMMER);
  });

  it('has days that every year has; every fault is named', async () => {
    const owner = await signedIn();

    const { status, body } = await owner.put<Problem>(
      '/v1/season',
      { season: { from: '02-29', to: 'autumn' } },
      VERSION(1),
    );

    expect(status).toBe(422);
    expect(body.errors?.map(({ pointer }) => pointer).sort()).toEqual(['/season/from', '/season/to']);
  });

  it('is the owner’s and the managers’ to say', async () => {
    const yard = await signedIn('yard');

    expect((await yard.put('/v1/season', SUMMER, VERSION(1))).status).toBe(403);
  });
});
