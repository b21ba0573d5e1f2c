import type { Problem } from '@garboard/contract/problem.ts';
import type { SavedView, SavedViewPage } from '@garboard/contract/saved-view/saved-view.ts';
import { type Client, signedIn } from '@garboard/tests/support/api.ts';
import { describe, expect, it } from 'vitest';

const EASTER = { name: 'Before Easter', page: 'due', filters: { until: '6-months', weight: 'law' }, shared: false };
const VERSION = (version: number) => ({ 'if-match': `"${version}"` });

async function saved(by: Client, more: object = {}): Promise<SavedView> {
  return (await by.post<SavedView>('/v1/saved-views', { ...EASTER, ...more })).body;
}
const namesFor = async (who: Client) =>
  (await who.get<SavedViewPage>('/v1/saved-views')).body.items.map(({ name }) => name);
const at = (view: SavedView, rest = '') => `/v1/saved-views/${view.id}${rest}`;

describe('saved views', () => {
  it('are kept as they were said, and read back', async () => {
    const owner = await signedIn();

    const { status, headers, body } = await owner.post<SavedView>('/v1/saved-views', EASTER);

    expect([status, headers.get('etag'), headers.get('location')]).toEqual([201, '"1"', at(body)]);
    expect((await owner.get<SavedView>(at(body))).body).toMatchObject(EASTER);
  });

  it('are seen by whoever saved them, and by everybody where they are shared; in order of name', async () => {
    const owner = await signedIn();
    const yard = await owner.as('yard');
    const own = await saved(owner);
    await saved(yard, { name: 'Yard’s Monday', shared: true });
    await saved(yard, { name: 'A yard matter', shared: false });

    expect(await namesFor(owner)).toEqual(['Before Easter', 'Yard’s Monday']);
    expect(await namesFor(yard)).toEqual(['A yard matter', 'Yard’s Monday']);
    expect((await yard.get(at(own))).status).toBe(404);
    expect((await yard.patch(at(own), { name: 'Mine now' }, VERSION(1))).status).toBe(404);
    expect(await namesFor(await signedIn())).toEqual([]);
  });

  it('are changed only over the version that was read', async () => {
    const owner = await signedIn();
    const view = await saved(owner);

    const changed = await owner.patch<SavedView>(at(view), { filters: { until: 'any' } }, VERSION(1));
    const late = await owner.patch<Problem>(at(view), { name: 'Late' }, VERSION(1));
    const blind = await owner.patch<Problem>(at(view), { name: 'Blind' });

    expect(changed.body).toMatchObject({ name: 'Before Easter', filters: { until: 'any' }, version: 2 });
    expect([late.status, late.headers.get('etag'), blind.status]).toEqual([412, '"2"', 428]);
  });

  it('removed, are gone; the removal can be undone under the same address', async () => {
    const owner = await signedIn();
    const view = await saved(owner);

    const removed = await owner.delete<SavedView>(at(view), VERSION(1));
    expect([removed.status, (await owner.get(at(view))).status, await namesFor(owner)]).toEqual([200, 404, []]);
    expect((await owner.delete(at(view), VERSION(2))).status).toBe(404);

    const restored = await owner.post<SavedView>(at(view, '/restoration'), undefined, VERSION(2));
    expect([restored.status, restored.headers.get('etag')]).toEqual([200, '"3"']);
    expect(await namesFor(owner)).toEqual(['Before Easter']);
  });

  it('no longer shared, belong to whoever took them back', async () => {
    const owner = await signedIn();
    const yard = await owner.as('yard');
    const view = await saved(owner, { shared: true });

    expect((await yard.patch(at(view), { shared: false }, VERSION(1))).status).toBe(200);

    expect(await namesFor(owner)).toEqual([]);
    expect(await namesFor(yard)).toEqual(['Before Easter']);
  });

  it('name every fault at once, and nothing is kept', async () => {
    const owner = await signedIn();

    const { status, body } = await owner.post<Problem>('/v1/saved-views', {
      ...{ name: ' ', page: 'moon', shared: 'yes' },
      filters: { until: '', 'not a filter': 'x' },
    });

    expect(status).toBe(422);
    expect(body.errors?.map(({ pointer }) => pointer).sort()).toEqual([
      ...['/filters/not a filter', '/filters/until', '/name', '/page', '/shared'],
    ]);
    expect(await namesFor(owner)).toEqual([]);
  });

  it('come in pages', async () => {
    const owner = await signedIn();
    for (const name of ['c', 'a', 'b']) await saved(owner, { name });

    const first = (await owner.get<SavedViewPage>('/v1/saved-views?limit=2')).body;
    const second = (await owner.get<SavedViewPage>(`/v1/saved-views?limit=2&cursor=${first.nextCursor}`)).body;

    expect([first, second].map(({ items }) => items.map(({ name }) => name))).toEqual([['a', 'b'], ['c']]);
    expect(second.nextCursor).toBeNull();
  });
});
