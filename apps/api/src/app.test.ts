import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { openPools } from '@garboard/db/pool.ts';
import { pools } from '@garboard/tests/support/database.ts';
import { mintOrganisation } from '@garboard/tests/support/organisation.ts';
import { accountsForTests } from '@garboard/tests/support/people.ts';
import { describe, expect, it, onTestFinished } from 'vitest';
import { files } from '../../../tests/src/support/files.ts';
import { createApp } from './app.ts';
import type { LogEntry } from './deps.ts';

const deps = { files, pools, now: () => new Date(), log: () => {}, version: '1' };

describe('a fault of ours', () => {
  async function withoutDatabase() {
    const lonely = openPools({ url: 'postgres://secret-user@127.0.0.1:1/none' });
    onTestFinished(() => lonely.close());
    const log: LogEntry[] = [];
    const app = createApp({ ...deps, pools: lonely, log: (entry) => log.push(entry) });
    const authorization = `Bearer ${await (await mintOrganisation(pools)).key()}`;
    const response = await app.request('/v1/vessels', { headers: { authorization, 'x-request-id': 'look-me-up' } });
    return { response, log };
  }

  it('says that it is one, and nothing of what is inside', async () => {
    const { response } = await withoutDatabase();

    expect(response.status).toBe(500);
    expect(response.headers.get('content-type')).toBe('application/problem+json');
    expect(await response.json()).toEqual({
      type: '/problems/fault',
      title: 'A fault of ours',
      status: 500,
      instance: 'look-me-up',
    });
    expect(response.headers.get('x-content-type-options')).toBe('nosniff');
  });

  it('is in the log under the request id, with the line of the request', async () => {
    const { log } = await withoutDatabase();

    expect(log).toMatchObject([
      { event: 'fault', requestId: 'look-me-up', error: { code: 'ECONNREFUSED' } },
      { event: 'request', requestId: 'look-me-up', path: '/v1/vessels', status: 500 },
    ]);
  });
});

describe('the dashboard', () => {
  async function withDashboard() {
    const dir = await mkdtemp(path.join(tmpdir(), 'garboard-dashboard-'));
    onTestFinished(() => rm(dir, { recursive: true }));
    await mkdir(path.join(dir, 'assets'));
    await writeFile(path.join(dir, 'index.html'), '<!doctype html><title>Garboard</title>');
    await writeFile(path.join(dir, 'assets/main-Bx3k_9aZ.js'), 'export {};\n'.repeat(200));
    await writeFile(path.join(dir, 'favicon.svg'), '<svg/>');
    const app = createApp({ ...deps, dashboardDir: dir });
    return (where: string, accept = 'text/html', method = 'GET') => app.request(where, { method, headers: { accept } });
  }

  it.each(['/', '/vessels/0198c5a2-7b1e-7c3d-9a41-5f2e8d7c6b5a?tab=facts', '/due', '/vessels'])(
    'is the one page at its own addresses: %s',
    async (where) => {
      const ask = await withDashboard();

      const response = await ask(where, 'text/html,application/xhtml+xml,*/*;q=0.8');

      expect([response.status, response.headers.get('content-type')]).toEqual([200, 'text/html; charset=utf-8']);
      expect(response.headers.get('cache-control')).toBe('no-cache');
      expect(await response.text()).toContain('<title>Garboard</title>');
    },
  );

  it('is found at the address that the start prints, whatever the asker takes', async () => {
    const ask = await withDashboard();

    expect((await ask('/', '*/*')).status).toBe(200);
    expect((await ask('/fleet', '*/*')).status).toBe(404);
  });

  it('keeps hashed files for ever and asks for the others anew', async () => {
    const ask = await withDashboard();

    const [script, icon] = [await ask('/assets/main-Bx3k_9aZ.js', '*/*'), await ask('/favicon.svg', '*/*')];

    expect(script.headers.get('content-type')).toBe('text/javascript; charset=utf-8');
    expect(script.headers.get('cache-control')).toBe('public, max-age=31536000, immutable');
    expect([icon.headers.get('content-type'), icon.headers.get('cache-control')]).toEqual([
      'image/svg+xml',
      'no-cache',
    ]);
  });

  it.each([
    ['a file that is missing', '/assets/main-00000000.js', 'text/html', 'GET'],
    ['an address of the API', '/v1/nothing', 'text/html', 'GET'],
    ['a program that asks for data', '/vessels', 'application/json', 'GET'],
    ['a change', '/vessels', 'text/html', 'POST'],
    ['a way out of the folder', '/assets/..%2f..%2fetc/passwd', '*/*', 'GET'],
    ['the folder itself', '/assets', 'text/html', 'GET'],
  ])('is not given for %s', async (_, where, accept, method) => {
    const ask = await withDashboard();

    const response = await ask(where, accept, method);

    expect([response.status, response.headers.get('content-type')]).toEqual([404, 'application/problem+json']);
  });

  it('is not there where none was built', async () => {
    const response = await createApp(deps).request('/', { headers: { accept: 'text/html' } });

    expect(response.status).toBe(404);
  });
});

function secureAccounts() {
  const accounts = accountsForTests();
  return { ...accounts, cookie: { ...accounts.cookie, secure: true } };
}

describe('secure cookies', () => {
  it('come with the promise to be asked over TLS only', async () => {
    const response = await createApp({ ...deps, accounts: secureAccounts() }).request('/healthz');

    expect(response.headers.get('strict-transport-security')).toContain('max-age=');
  });
});

describe('the reference for people', () => {
  it('comes whole from this host', async () => {
    const app = createApp(deps);
    const page = await (await app.request('/docs')).text();

    const addresses = [...page.matchAll(/(?:src|href)="([^"]+)"/g)].map(([, address]) => address ?? '');

    expect(addresses.length).toBeGreaterThan(3);
    for (const address of addresses) expect((await app.request(address)).status, address).toBe(200);
  });
});
