/** What holds for every request, asked of a started server through a real socket. */
import { once } from 'node:events';
import { connect, type Socket } from 'node:net';
import { serve } from '@garboard/api/serve.test-support.ts';
import { PROBLEM_TYPES, type Problem } from '@garboard/contract/problem.ts';
import type { VesselPage } from '@garboard/contract/vessel/vessel.ts';
import { afterAll, describe, expect, it } from 'vitest';
import { app, type Client, type Headed, log, signedIn } from '../support/api.ts';

const server = await serve(app);
afterAll(() => server.close());

const send = (path: string, init: RequestInit) => fetch(`${server.address}${path}`, { redirect: 'manual', ...init });
const somebody = (): Promise<Client> => signedIn('owner', undefined, send);

/** Nothing was written: the register is as empty as before. */
async function expectNothingWritten(owner: Client): Promise<void> {
  expect((await owner.get<VesselPage>('/v1/vessels')).body.items).toEqual([]);
}

describe('a body that cannot be read', () => {
  it('is named where the database could not hold it', async () => {
    const owner = await somebody();

    const { status, body } = await owner.post<Problem>(
      '/v1/vessels',
      '{"name":"Teal\\u0000","rig":"\\ud800","a/b\\u0000":1}',
    );

    expect(status).toBe(422);
    expect(body.errors?.map(({ pointer }) => pointer).sort()).toEqual(['/a~1b\u0000', '/name', '/rig']);
    await expectNothingWritten(owner);
  });
});

describe('a body of the wrong kind', () => {
  it.each<[string, Headed]>([
    ['text', { 'content-type': 'text/plain' }],
    ['a form', { 'content-type': 'application/x-www-form-urlencoded' }],
    ['another JSON', { 'content-type': 'application/merge-patch+json' }],
    ['another alphabet', { 'content-type': 'application/json; charset=latin1' }],
    ['compressed', { 'content-encoding': 'gzip' }],
  ])('is 415: %s', async (_, headers) => {
    const owner = await somebody();

    const { status, headers: told, body } = await owner.post<Problem>('/v1/vessels', { name: 'Teal' }, headers);

    expect([status, body.type, told.get('accept')]).toEqual([
      415,
      '/problems/unsupported-media-type',
      'application/json',
    ]);
    await expectNothingWritten(owner);
  });

  it('is 415 where two kinds are named', async () => {
    const owner = await somebody();

    const status = await raw(
      owner,
      ['Content-Type: application/json', 'Content-Type: text/plain', 'Content-Length: 15'],
      '{"name":"Teal"}',
    );

    expect(status).toBe('HTTP/1.1 415 Unsupported Media Type');
    await expectNothingWritten(owner);
  });

  it('is read where it says UTF-8 itself', async () => {
    const owner = await somebody();

    expect(
      (await owner.post('/v1/vessels', { name: 'Teal' }, { 'content-type': 'Application/JSON; charset="UTF-8"' }))
        .status,
    ).toBe(201);
  });
});

describe('a body that is too large', () => {
  const LIMIT = 256 * 1024;
  const ofSize = (bytes: number) => `{"name":"Teal","rig":"${'x'.repeat(bytes - 24)}"}`;

  it('is 413, and one byte less is read', async () => {
    const owner = await somebody();

    const [over, at] = [
      await owner.post('/v1/vessels', ofSize(LIMIT + 1)),
      await owner.post('/v1/vessels', ofSize(LIMIT)),
    ];

    expect([over.status, at.status]).toEqual([413, 422]);
    expect(over.headers.get('connection')).toBe('close');
    await expectNothingWritten(owner);
  });

  it('is 413 where its length is not told beforehand', async () => {
    const owner = await somebody();
    const chunk = 'x'.repeat(60_000);
    const chunks = Array.from({ length: 5 }, () => `${chunk.length.toString(16)}\r\n${chunk}\r\n`).join('');

    const status = await raw(
      owner,
      ['Content-Type: application/json', 'Transfer-Encoding: chunked'],
      `${chunks}0\r\n\r\n`,
    );

    expect(status).toBe('HTTP/1.1 413 Payload Too Large');
  });
});

describe('a body that never ends', () => {
  it.each([
    ['of a length told beforehand', 'Content-Length: 99', '{"name":'],
    ['in chunks', 'Transfer-Encoding: chunked', '8\r\n{"name":\r\n'],
  ])('writes nothing, and is no fault of ours, when its sender goes away: %s', async (_, header, body) => {
    const owner = await somebody();
    const socket = await sent(owner, ['Content-Type: application/json', header], body);
    log.length = 0;

    socket.destroy();

    await expect.poll(() => log).toMatchObject([{ event: 'request', path: '/v1/vessels', status: 408 }]);
    await expectNothingWritten(owner);
  });
});

/** One POST as bytes on the wire; answers with the status line. */
async function raw(owner: Client, headers: readonly string[], body: string): Promise<string> {
  const socket = await sent(owner, headers, body);
  const [first] = (await once(socket, 'data')) as [Buffer];
  socket.destroy();
  return first.toString().split('\r\n')[0] ?? '';
}

async function sent(owner: Client, headers: readonly string[], body: string): Promise<Socket> {
  const socket = connect(Number(new URL(server.address).port), '127.0.0.1');
  const lines = [
    'POST /v1/vessels HTTP/1.1',
    'Host: localhost',
    'Connection: close',
    `Authorization: Bearer ${await owner.organisation.key()}`,
  ];
  socket.on('error', () => {});
  const bytes = [...lines, ...headers, '', body].join('\r\n');
  await new Promise((written) => socket.write(bytes, written));
  return socket;
}

describe('an address', () => {
  it.each([
    '/v1/nothing',
    '/v1',
    '/v1/vessels/',
    '/openapi.yaml',
    '/assets/app-00000000.js',
    '/problems/unheard-of',
    '/docs/../package.json',
    '/docs/package.json',
  ])('that is none is 404: %s', async (path) => {
    const response = await send(path, { headers: { accept: 'text/html' } });

    expect([response.status, (await response.json()).type]).toEqual([404, '/problems/not-found']);
  });

  it.each([
    ['DELETE', '/v1/vessels', 'GET, HEAD, POST'],
    ['PUT', '/v1/vessels/0198c5a2-7b1e-7c3d-9a41-5f2e8d7c6b5a', 'GET, HEAD, PATCH'],
    ['DELETE', '/v1/items/0198c5a2-7b1e-7c3d-9a41-5f2e8d7c6b5a/facts', 'GET, HEAD, POST'],
    ['PATCH', '/v1/items/0198c5a2-7b1e-7c3d-9a41-5f2e8d7c6b5a/facts', 'GET, HEAD, POST'],
    ['GET', '/v1/due-dates/explain', 'POST'],
    ['POST', '/healthz', 'GET, HEAD'],
    ['POST', '/docs', 'GET, HEAD'],
  ])('does not take every method: %s %s', async (method, path, allow) => {
    const response = await send(path, { method });

    expect([response.status, response.headers.get('allow')]).toEqual([405, allow]);
    expect(await response.json()).toMatchObject({ type: '/problems/method-not-allowed', status: 405 });
  });
});

describe('a request id', () => {
  it('comes back, stands in the problem and in the log', async () => {
    log.length = 0;
    const response = await send('/v1/session', { headers: { 'x-request-id': 'my-own.id/7' } });

    expect(response.headers.get('x-request-id')).toBe('my-own.id/7');
    expect((await response.json()).instance).toBe('my-own.id/7');
    expect(log).toMatchObject([
      { event: 'request', requestId: 'my-own.id/7', method: 'GET', path: '/v1/session', status: 401, actor: 'nobody' },
    ]);
  });

  it.each(['', 'x'.repeat(129), 'two words', 'caf\u00e9'])('is made up where it is not sane: "%s"', async (id) => {
    const response = await send('/healthz', { headers: { 'x-request-id': id } });

    expect(response.headers.get('x-request-id')).toMatch(/^[0-9a-f-]{36}$/);
  });

  it('names whose request it was, and no secret', async () => {
    const owner = await somebody();
    log.length = 0;

    await owner.post('/v1/vessels', { name: 'Teal' });

    expect(log).toMatchObject([
      { path: '/v1/vessels', method: 'POST', status: 201, actor: 'api_key', organisationId: owner.organisation.id },
    ]);
    expect(JSON.stringify(log)).not.toContain('gbk_');
  });
});

describe('a problem', () => {
  it.each(PROBLEM_TYPES)('has a page that says what it means: %s', async (type) => {
    const response = await send(`/problems/${type}`, {});

    expect([response.status, response.headers.get('content-type')]).toEqual([200, 'text/html; charset=UTF-8']);
    expect(await response.text()).toContain(`/problems/${type}`);
  });
});

describe('every answer', () => {
  it.each(['/v1/session', '/docs', '/problems/invalid', '/healthz', '/nothing'])(
    'tells a browser to load from here only: %s',
    async (path) => {
      const { headers } = await send(path, {});

      expect(headers.get('content-security-policy')).toContain("default-src 'self'");
      expect(headers.get('content-security-policy')).toContain("frame-ancestors 'none'");
      expect(headers.get('content-security-policy')).not.toContain('unsafe');
      expect(headers.get('x-content-type-options')).toBe('nosniff');
      expect(headers.get('referrer-policy')).toBe('no-referrer');
      expect(headers.get('strict-transport-security')).toBeNull();
    },
  );

  it('with somebody’s data in it is kept nowhere', async () => {
    const owner = await somebody();

    const answers = [
      await owner.get('/v1/vessels'),
      await owner.post('/v1/vessels', '{'),
      await owner.post('/v1/vessels', { name: 'Teal' }),
    ];

    expect(answers.map(({ headers }) => headers.get('cache-control'))).toEqual(['no-store', 'no-store', 'no-store']);
  });

  it('to HEAD is the answer to GET without its body', async () => {
    const owner = await somebody();
    const { headers } = await owner.get('/v1/vessels');
    const authorization = `Bearer ${await owner.organisation.key()}`;

    const response = await send('/v1/vessels', { method: 'HEAD', headers: { authorization } });

    expect([response.status, await response.text(), response.headers.get('content-type')]).toEqual([
      200,
      '',
      headers.get('content-type'),
    ]);
  });
});
