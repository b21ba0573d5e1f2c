/** Requests that never become requests: what the server says where the API is not asked. */
import { once } from 'node:events';
import { connect } from 'node:net';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Listening, listen } from './listen.ts';

let server: Listening;
const reached: string[] = [];

beforeAll(async () => {
  const fetch = async (request: Request) => {
    const body = await request.text().catch(() => 'cut off');
    reached.push(body);
    return new Response(body);
  };
  server = await listen(fetch, 0, '127.0.0.1', 200);
});
afterAll(() => server.stop());

/** Everything that comes back for these bytes, until the server ends the connection. */
async function send(bytes: string): Promise<{ head: string; body: string }> {
  const socket = connect(Number(new URL(server.address).port), '127.0.0.1');
  let answer = '';
  socket.on('data', (data) => {
    answer += data;
  });
  socket.write(bytes);
  await once(socket, 'close');
  const [head = '', body = ''] = answer.split('\r\n\r\n');
  return { head, body };
}

describe('a request that cannot be read', () => {
  it.each([
    ['that stops in its headers', 'POST / HTTP/1.1\r\nHost: a\r\n', 408, 'came-too-slowly'],
    ['that stops in its body', 'POST / HTTP/1.1\r\nHost: a\r\nContent-Length: 9\r\n\r\n{"a":', 408, 'came-too-slowly'],
    ['that is no HTTP', 'good morning\r\n\r\n', 400, 'unreadable-request'],
    [
      'of two lengths',
      'POST / HTTP/1.1\r\nHost: a\r\nContent-Length: 1\r\nContent-Length: 2\r\n\r\n',
      400,
      'unreadable-request',
    ],
    [
      'with too many headers',
      `GET / HTTP/1.1\r\nHost: a\r\nX: ${'x'.repeat(20_000)}\r\n\r\n`,
      431,
      'headers-too-large',
    ],
  ])('is answered with a problem all the same: one %s', async (_, bytes, status, type) => {
    const { head, body } = await send(bytes);

    expect(head).toContain(`HTTP/1.1 ${status} `);
    expect(head).toContain('Content-Type: application/problem+json');
    expect(JSON.parse(body)).toMatchObject({ type: `/problems/${type}`, status });
    expect(head).toContain(`X-Request-Id: ${JSON.parse(body).instance}`);
    expect(reached).not.toContain('{"a":');
  });

  it('does not disturb those that can', async () => {
    expect(await (await fetch(server.address, { method: 'POST', body: 'whole' })).text()).toBe('whole');
  });
});
