import { pools } from '@garboard/tests/support/database.ts';
import { mintOrganisation, NOW } from '@garboard/tests/support/organisation.ts';
import { describe, expect, it } from 'vitest';
import { files } from '../../../../tests/src/support/files.ts';
import { createApp } from '../app.ts';
import { openMetrics } from './metrics.ts';

const token = 'a-token-that-is-long-enough-to-be-one';

function counted() {
  const counts = openMetrics(() => ({ total: 4, idle: 3, waiting: 2 }));
  const deps = { files, pools, now: () => NOW, version: 'test', metrics: { token, counts } };
  const app = createApp({ ...deps, log: (entry) => counts.observe(entry) });
  const read = (authorization?: string) =>
    app.request('/metrics', { headers: { ...(authorization !== undefined && { authorization }) } });
  return { app, read };
}

describe('GET /metrics', () => {
  it('counts requests by route, never by what stood in the address, and tells of the connections', async () => {
    const { app, read } = counted();
    const key = await (await mintOrganisation(pools)).key();
    await app.request('/v1/vessels/0198c5a2-7b1e-7c3d-9a41-5f2e8d7c6b5a', {
      headers: { authorization: `Bearer ${key}` },
    });

    const response = await read(`Bearer ${token}`);

    expect(response.status).toBe(200);
    expect(response.headers.get('content-type')).toContain('text/plain');
    const text = await response.text();
    const route = 'method="GET",route="/v1/vessels/:vesselId",status="404"';
    expect(text).toContain(`garboard_request_duration_seconds_count{${route}} 1`);
    expect(text).not.toContain('0198c5a2');
    expect(text).toContain('garboard_database_connections{state="busy"} 1');
    expect(text).toContain('garboard_database_connections{state="waiting"} 2');
    expect(text).toContain('garboard_faults 0');
    expect(text).toContain('process_resident_memory_bytes');
  });

  it('is for the host’s own token: no organisation’s key opens it', async () => {
    const { read } = counted();
    const key = await (await mintOrganisation(pools)).key('owner');
    for (const credential of [undefined, `Bearer ${key}`, `Bearer ${token}x`, token]) {
      const response = await read(credential);
      expect([response.status, response.headers.get('www-authenticate')]).toEqual([401, 'Bearer realm="metrics"']);
    }
  });

  it('is not there where the host was started without one', async () => {
    const app = createApp({ pools, files, now: () => NOW, log: () => {}, version: 'test' });
    expect((await app.request('/metrics')).status).toBe(404);
  });
});
