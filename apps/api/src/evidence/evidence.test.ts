/** A file from its announcement to the picture that is shown of it, through the API. */
import { randomBytes } from 'node:crypto';
import { blobName } from '@garboard/blobs/evidence/names.ts';
import type { EvidenceFile, EvidenceFilePage, Upload } from '@garboard/contract/evidence/evidence.ts';
import type { Finding } from '@garboard/contract/finding/finding.ts';
import type { Problem } from '@garboard/contract/problem.ts';
import type { SealedCopy } from '@garboard/contract/survey-visit/visit.ts';
import { parse as exif } from 'exifr';
import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import { app, type Client, match, pointersOf, signedIn } from '../../../../tests/src/support/api.ts';
import { aJpeg, aPhotograph, sha256Of } from '../../../../tests/src/support/evidence.ts';
import { files } from '../../../../tests/src/support/files.ts';
import { aFinding } from '../../../../tests/src/support/findings.ts';
import { aVessel } from '../../../../tests/src/support/vessels.ts';
import { aReadyVisit, aShortRoute } from '../../../../tests/src/support/visits.ts';

const MIB = 1024 * 1024;

async function aBoat() {
  const owner = await signedIn();
  const vessel = await aVessel(owner.organisation.ctx());
  const key = await owner.organisation.key();
  return { owner, vessel, key };
}

const announce = (client: Client, vesselId: string, bytes: Uint8Array, more: object = {}) =>
  client.post<Upload>(`/v1/vessels/${vesselId}/uploads`, { sha256: sha256Of(bytes), bytes: bytes.length, ...more });

async function send(
  key: string,
  uploadId: string,
  version: number,
  piece: Uint8Array,
  type = 'application/octet-stream',
) {
  const headers = { authorization: `Bearer ${key}`, 'content-type': type, ...match(version) };
  const response = await app.request(`/v1/uploads/${uploadId}`, {
    method: 'PATCH',
    headers,
    body: new Uint8Array(piece),
  });
  return { status: response.status, headers: response.headers, body: (await response.json()) as Upload & Problem };
}

const fetched = async (key: string, path: string) => {
  const response = await app.request(path, { headers: { authorization: `Bearer ${key}` } });
  return { status: response.status, headers: response.headers, bytes: Buffer.from(await response.arrayBuffer()) };
};

describe('a photograph', () => {
  it('comes in pieces, is kept byte for byte by its hash, and is shown upright without what it may tell', async () => {
    const { owner, vessel, key } = await aBoat();
    const plain = await sharp({
      create: {
        width: 1800,
        height: 1200,
        channels: 3,
        background: 'teal',
        noise: { type: 'gaussian', mean: 128, sigma: 60 },
      },
    })
      .jpeg({ quality: 97 })
      .toBuffer();
    const bytes = await sharp(plain)
      .withExif({
        IFD0: { Make: 'Cam' },
        IFD3: { GPSLatitudeRef: 'N', GPSLatitude: '50/1 30/1 0/1', GPSLongitudeRef: 'W', GPSLongitude: '4/1 0/1 0/1' },
      })
      .withMetadata({ orientation: 6 })
      .jpeg({ quality: 97 })
      .toBuffer();
    expect(bytes.length).toBeGreaterThan(MIB);

    const begun = await announce(owner, vessel.id, bytes, {
      words: 'Crack',
      zone: 'mast_and_rigging',
      point: 'port chainplate',
    });
    expect([begun.status, begun.body.state, begun.body.received]).toEqual([201, 'receiving', 0]);
    const first = await send(key, begun.body.id, 1, bytes.subarray(0, MIB));
    expect([first.status, first.body.received, first.body.state]).toEqual([200, MIB, 'receiving']);
    const rest = await sendAll(key, begun.body.id, bytes, MIB, 2);
    expect(rest).toMatchObject({ state: 'kept', received: bytes.length, sha256: sha256Of(bytes) });

    const about = (await owner.get<EvidenceFile>(`/v1/evidence/${rest.evidenceId}`)).body;
    expect(about).toMatchObject({
      kind: 'photograph',
      mediaType: 'image/jpeg',
      sizePx: { width: 1200, height: 1800 },
      takenOn: '2026-11-25',
      point: 'port chainplate',
    });
    const original = await fetched(key, `/v1/evidence/${rest.evidenceId}/original`);
    expect(original.bytes.equals(bytes)).toBe(true);
    expect(original.headers.get('content-disposition')).toMatch(/^attachment; filename="2026-11-25-[0-9a-f]{8}\.jpg"$/);
    const view = await fetched(key, `/v1/evidence/${rest.evidenceId}/view`);
    expect(await sharp(view.bytes).metadata()).toMatchObject({
      format: 'jpeg',
      width: 1067,
      height: 1600,
    });
    expect(await exif(view.bytes)).toBeUndefined();
    expect(await exif(original.bytes)).toMatchObject({ Make: 'Cam', latitude: 50.5 });
    const small = await fetched(key, `/v1/evidence/${rest.evidenceId}/view?size=small`);
    expect(await sharp(small.bytes).metadata()).toMatchObject({ width: 240, height: 360 });
    for (const { headers } of [original, view, small])
      expect([headers.get('content-security-policy'), headers.get('x-content-type-options')]).toEqual([
        "default-src 'none'; sandbox",
        'nosniff',
      ]);
  });

  it('goes on after a cut from where it is safe, and no piece counts twice', async () => {
    const { owner, vessel, key } = await aBoat();
    const bytes = await aJpeg(400, 300);
    const { id } = (await announce(owner, vessel.id, bytes)).body;
    const half = Math.floor(bytes.length / 2);
    await send(key, id, 1, bytes.subarray(0, half));

    const again = await send(key, id, 1, bytes.subarray(0, half));
    expect([again.status, again.headers.get('etag')]).toEqual([412, '"2"']);
    const asked = await owner.get<Upload>(`/v1/uploads/${id}`);
    expect([asked.body.received, asked.headers.get('etag')]).toEqual([half, '"2"']);
    const last = await send(key, id, 2, bytes.subarray(half));
    expect(last.body.state).toBe('kept');
    expect((await send(key, id, 4, new Uint8Array())).status).toBe(409);
  });

  it('is refused in words where its bytes are not those that were announced, and nothing of it is kept', async () => {
    const { owner, vessel, key } = await aBoat();
    const bytes = await aJpeg();
    const { id } = (await announce(owner, vessel.id, bytes)).body;
    const changed = Buffer.from(bytes);
    changed[100] = (changed[100] ?? 0) ^ 1;

    const { status, body } = await send(key, id, 1, changed);

    expect([status, body.state]).toEqual([200, 'refused']);
    expect(body.refused).toContain('not the one that was announced');
    expect((await owner.get<EvidenceFilePage>(`/v1/vessels/${vessel.id}/evidence`)).body.items).toEqual([]);
  });

  it.each([
    ['nothing', 0],
    ['more than was announced', 5000],
  ])('does not take %s as a piece', async (_, size) => {
    const { owner, vessel, key } = await aBoat();
    const { id } = (await announce(owner, vessel.id, await aJpeg())).body;
    const { status, body } = await send(key, id, 1, randomBytes(size));
    expect([status, body.type]).toEqual([422, '/problems/invalid']);
    expect((await owner.get<Upload>(`/v1/uploads/${id}`)).body.received).toBe(0);
  });

  it('is not taken as anything but bytes, nor in pieces too large, nor without its version', async () => {
    const { owner, vessel, key } = await aBoat();
    const { id } = (await announce(owner, vessel.id, Buffer.alloc(3 * MIB))).body;
    expect((await send(key, id, 1, Buffer.from('{}'), 'application/json')).status).toBe(415);
    expect((await send(key, id, 1, Buffer.alloc(MIB + 1))).status).toBe(413);
    const headers = { authorization: `Bearer ${key}`, 'content-type': 'application/octet-stream' };
    expect((await app.request(`/v1/uploads/${id}`, { method: 'PATCH', headers, body: 'x' })).status).toBe(428);
  });

  it('names every fault of its announcement', async () => {
    const { owner, vessel } = await aBoat();
    const said = { zone: 'crows_nest', point: 'aloft', takenOn: '2027-01-01', visitId: vessel.id };
    expect(pointersOf(await announceBadly(owner, vessel.id, said))).toEqual(['/zone', '/takenOn', '/visitId']);
    expect(pointersOf(await announceBadly(owner, vessel.id, { point: 'aloft' }))).toEqual(['/point']);
    expect(pointersOf(await announceBadly(owner, vessel.id, { bytes: 21 * MIB, sha256: 'x' }))).toEqual([
      '/sha256',
      '/bytes',
    ]);
  });
});

const announceBadly = (owner: Client, vesselId: string, more: object) =>
  owner.post<Problem>(`/v1/vessels/${vesselId}/uploads`, { sha256: '0'.repeat(64), bytes: 10, ...more });

async function sendAll(key: string, id: string, bytes: Uint8Array, from: number, version: number): Promise<Upload> {
  const { body } = await send(key, id, version, bytes.subarray(from, from + MIB));
  return body.state === 'receiving' ? sendAll(key, id, bytes, from + MIB, version + 1) : body;
}

describe('evidence', () => {
  it('is listed by place, point and visit, the latest taken first, page by page', async () => {
    const { owner, vessel } = await aBoat();
    const ctx = owner.organisation.ctx();
    const at = { zone: 'mast_and_rigging', point: 'port chainplate' };
    const old = await aPhotograph(ctx, vessel.id, { ...at, takenOn: '2025-11-01' });
    const elsewhere = await aPhotograph(ctx, vessel.id, { zone: 'gas_installation', takenOn: '2026-01-01' });
    const late = await aPhotograph(ctx, vessel.id, { ...at, takenOn: '2026-11-01' });
    const ids = async (query: string) =>
      (await owner.get<EvidenceFilePage>(`/v1/vessels/${vessel.id}/evidence${query}`)).body.items.map(({ id }) => id);

    expect(await ids('')).toEqual([late, elsewhere, old]);
    expect(await ids('?point=port%20chainplate')).toEqual([late, old]);
    expect(await ids('?zone=gas_installation')).toEqual([elsewhere]);
    const first = (await owner.get<EvidenceFilePage>(`/v1/vessels/${vessel.id}/evidence?limit=2`)).body;
    expect(await ids(`?limit=2&cursor=${first.nextCursor}`)).toEqual([old]);
  });

  it('is named by a finding only where it is a file of the same vessel', async () => {
    const { owner, vessel } = await aBoat();
    const ctx = owner.organisation.ctx();
    const finding = await aFinding(ctx, vessel.id);
    const other = await aPhotograph(ctx, (await aVessel(ctx)).id);
    const own = await aPhotograph(ctx, vessel.id);
    const seen = (evidenceId: string) => ({
      seen: 'worse',
      on: '2026-11-25',
      evidence: [{ kind: 'photograph', words: 'now', evidenceId }],
    });
    const path = `/v1/findings/${finding.id}/sightings`;

    expect(pointersOf(await owner.post<Problem>(path, seen(other), match(1)))).toEqual(['/evidence/0/evidenceId']);
    expect((await owner.post<Finding>(path, seen(own), match(1))).status).toBe(200);
  });

  it('of a visit is sealed with it, and none is added afterwards', async () => {
    const { owner, vessel, key } = await aBoat();
    const ctx = owner.organisation.ctx();
    await aShortRoute(ctx);
    const visit = await aReadyVisit(ctx, vessel.id);
    const bytes = await aJpeg();
    await aPhotograph(ctx, vessel.id, { visitId: visit.id, zone: 'papers' }, bytes);
    const late = await aJpeg();
    const { id } = (await announce(owner, vessel.id, late, { visitId: visit.id })).body;
    await owner.post(`/v1/visits/${visit.id}/completion`, { completedOn: '2026-11-25' }, match(1));

    const { sealed } = (await owner.get<SealedCopy>(`/v1/visits/${visit.id}/sealed-copy`)).body;
    expect(JSON.parse(sealed).evidence).toMatchObject([{ sha256: sha256Of(bytes), zone: 'papers' }]);
    const { body } = await send(key, id, 1, late);
    expect([body.state, body.refused]).toEqual(['refused', expect.stringContaining('came too late')]);
    expect(pointersOf(await announceBadly(owner, vessel.id, { visitId: visit.id }))).toEqual(['/visitId']);
  });

  it('whose file is gone from the store says so, and what can be drawn again is', async () => {
    const { owner, vessel, key } = await aBoat();
    const bytes = await aJpeg();
    const id = await aPhotograph(owner.organisation.ctx(), vessel.id, {}, bytes);
    const name = (part: 'large' | 'original') => blobName(owner.organisation.id, sha256Of(bytes), part);
    await files.store.remove(name('large'));
    expect((await fetched(key, `/v1/evidence/${id}/view`)).status).toBe(200);
    expect(await files.store.get(name('large'))).not.toBe('missing');

    await files.store.remove(name('large'));
    await files.store.remove(name('original'));
    for (const path of ['view', 'original']) {
      const { status, bytes: body } = await fetched(key, `/v1/evidence/${id}/${path}`);
      expect([status, JSON.parse(body.toString()).type]).toEqual([404, '/problems/file-missing']);
    }
    expect((await owner.get<EvidenceFile>(`/v1/evidence/${id}`)).status).toBe(200);
  });
});
