import { randomUUID } from 'node:crypto';
import type { BlobStore } from '@garboard/blobs/blob-store.ts';
import { blobName, type Part } from '@garboard/blobs/evidence/names.ts';
import { describe, expect, it } from 'vitest';
import { pools } from '../../../../tests/src/support/database.ts';
import { aJpeg, anUpload, aPhotograph, sha256Of } from '../../../../tests/src/support/evidence.ts';
import { files } from '../../../../tests/src/support/files.ts';
import { accepted, mintOrganisation, NOW } from '../../../../tests/src/support/organisation.ts';
import { aVessel } from '../../../../tests/src/support/vessels.ts';
import { addPiece } from '../evidence/add-piece.ts';
import { countMissing, sweepFiles } from './look-after-files.ts';

const { store } = files;
const HOUR = 3_600_000;
/** Files are put at the machine's own time; the sweep is asked for at any. */
const inHours = (hours: number) => new Date(Date.now() + hours * HOUR);

async function aBoat() {
  const organisation = await mintOrganisation(pools);
  const ctx = organisation.ctx();
  const vessel = await aVessel(ctx);
  const bytes = await aJpeg();
  const name = (part: Part) => blobName(organisation.id, sha256Of(bytes), part);
  const of = { db: pools.app, store, organisationId: organisation.id };
  return { ctx, vessel, bytes, name, of };
}

describe('the sweep', () => {
  it('takes away what no record refers to once it has lain there for a day, and nothing else', async () => {
    const { ctx, vessel, bytes, name, of } = await aBoat();
    await aPhotograph(ctx, vessel.id, {}, bytes);
    const orphan = blobName(of.organisationId, 'a'.repeat(64), 'original');
    await store.put(orphan, Buffer.from('nobody’s'));

    expect(await sweepFiles(of, inHours(23))).toEqual({ uploads: 0, files: 0 });
    expect(await store.get(orphan)).not.toBe('missing');
    expect((await sweepFiles(of, inHours(25))).files).toBe(1);
    expect(await store.get(orphan)).toBe('missing');
    for (const part of ['original', 'large', 'small'] as const) expect(await store.get(name(part))).not.toBe('missing');
  });

  it('forgets an upload that nobody went on with for a week, and what had come of it', async () => {
    const { ctx, vessel, bytes, of } = await aBoat();
    const { id } = await anUpload(ctx, vessel.id, bytes);
    accepted(await addPiece(ctx, files, { uploadId: id, expectedVersion: 1, body: bytes.subarray(0, 100) }));

    expect((await sweepFiles(of, new Date(NOW.getTime() + 6 * 24 * HOUR))).uploads).toBe(0);
    expect((await sweepFiles(of, new Date(NOW.getTime() + 8 * 24 * HOUR))).uploads).toBe(1);
    expect(await addPiece(ctx, files, { uploadId: id, expectedVersion: 2, body: bytes })).toMatchObject({
      failure: { kind: 'not_found' },
    });
  });

  it('never takes a file away under somebody who is just keeping it', async () => {
    const { ctx, vessel, bytes, name, of } = await aBoat();
    await store.put(name('original'), bytes);
    const { id } = await anUpload(ctx, vessel.id, bytes);
    let swept: Promise<unknown> = Promise.resolve();
    // The file is put, its record is not yet there to be seen: at this moment the sweep comes by.
    const meanwhile: BlobStore = {
      ...store,
      put: async (blob, body) => {
        await store.put(blob, body);
        if (blob === name('small')) swept = sweepFiles(of, inHours(48));
        await swept;
      },
    };
    const piece = { uploadId: id, expectedVersion: 1, body: bytes };
    accepted(await addPiece(ctx, { ...files, store: meanwhile }, piece));

    expect(await swept).toMatchObject({ files: 0 });
    for (const part of ['original', 'large', 'small'] as const) expect(await store.get(name(part))).not.toBe('missing');
  });
});

describe('the count of what is missing', () => {
  it('counts originals, and not what can be drawn again', async () => {
    const { ctx, vessel, bytes, name, of } = await aBoat();
    await aPhotograph(ctx, vessel.id, {}, bytes);
    await aPhotograph(ctx, vessel.id, { words: 'the same once more' }, bytes);
    await store.remove(name('small'));
    expect(await countMissing(of)).toEqual({ kept: 1, missing: 0 });
    await store.remove(name('original'));
    expect(await countMissing(of)).toEqual({ kept: 1, missing: 1 });
    expect(await countMissing({ ...of, organisationId: randomUUID() })).toEqual({ kept: 0, missing: 0 });
  });
});
