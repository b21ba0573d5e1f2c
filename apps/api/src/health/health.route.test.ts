import { openPools } from '@garboard/db/pool.ts';
import { app, tell } from '@garboard/tests/support/api.ts';
import { freshDatabase } from '@garboard/tests/support/database.ts';
import { describe, expect, it, onTestFinished } from 'vitest';
import { files } from '../../../../tests/src/support/files.ts';
import { createApp } from '../app.ts';

const deps = { files, now: () => new Date(), log: () => {}, version: '1.2.3' };

function appOver(url: string) {
  const broken = openPools({ url });
  onTestFinished(() => broken.close());
  return createApp({ ...deps, pools: broken });
}

describe('GET /healthz', () => {
  it('answers without a database, and names the version', async () => {
    const lonely = appOver('postgres://nobody@127.0.0.1:1/none');

    const { status, body } = await tell(lonely.request, 'GET', '/healthz', {});

    expect([status, body]).toEqual([200, { status: 'ok', version: '1.2.3' }]);
  });
});

describe('GET /readyz', () => {
  it('says that it is ready', async () => {
    expect((await tell(app.request, 'GET', '/readyz', {})).status).toBe(200);
  });

  it('is not ready without a database', async () => {
    const lonely = appOver('postgres://nobody@127.0.0.1:1/none');

    const { status, body } = await tell(lonely.request, 'GET', '/readyz', {});

    expect(status).toBe(503);
    expect(body).toMatchObject({ type: '/problems/not-ready', status: 503 });
  });

  it('is not ready on a database without our tables', async () => {
    const empty = await freshDatabase();

    expect((await tell(appOver(empty.url).request, 'GET', '/readyz', {})).status).toBe(503);
  });
});
