import type { Vessel } from '@garboard/contract/vessel/vessel.ts';
import { signedIn } from '@garboard/tests/support/api.ts';
import { aVessel } from '@garboard/tests/support/vessels.ts';
import { describe, expect, it } from 'vitest';

describe('GET /v1/vessels/{vesselId}', () => {
  it('answers with her particulars and her version', async () => {
    const owner = await signedIn();
    const { id } = await aVessel(owner.organisation.ctx(), ['solas'], 'Godwit');

    const { status, headers, body } = await owner.get(`/v1/vessels/${id}`);

    expect(status).toBe(200);
    expect(headers.get('etag')).toBe('"1"');
    expect(body).toMatchObject({ id, name: 'Godwit', schemes: ['solas'], timeZone: 'UTC', version: 1 });
  });

  it('leaves out what is not known', async () => {
    const owner = await signedIn();
    const { id } = await aVessel(owner.organisation.ctx());

    const { body } = await owner.get<Vessel>(`/v1/vessels/${id}`);

    expect(Object.keys(body)).toEqual(['id', 'name', 'identifiers', 'schemes', 'timeZone', 'createdAt', 'version']);
  });

  it('has nothing more to say to a reader who has this version', async () => {
    const owner = await signedIn();
    const { id } = await aVessel(owner.organisation.ctx());

    const same = await owner.get(`/v1/vessels/${id}`, { 'if-none-match': 'W/"7", "1"' });
    const other = await owner.get(`/v1/vessels/${id}`, { 'if-none-match': '"2"' });

    expect([same.status, same.text, other.status]).toEqual([304, '', 200]);
  });

  it('knows no vessel by an id that is none', async () => {
    const owner = await signedIn();

    const { status } = await owner.get('/v1/vessels/godwit');

    expect(status).toBe(404);
  });
});
