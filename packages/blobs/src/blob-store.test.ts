/** The same sentences of a folder and of a real server that speaks S3. */
import { createHash, randomUUID } from 'node:crypto';
import { mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import S3rver from 's3rver';
import { afterAll, describe, expect, it } from 'vitest';
import type { BlobStore } from './blob-store.ts';
import { blobName } from './evidence/names.ts';
import { openBucket } from './open-bucket.ts';
import { openFolder } from './open-folder.ts';

const dir = mkdtempSync(path.join(tmpdir(), 'garboard-blobs-'));
const server = new S3rver({
  ...{ port: 0, address: '127.0.0.1', silent: true, directory: path.join(dir, 's3') },
  configureBuckets: [{ name: 'pictures', configs: [] }],
});
const { port } = await server.run();
afterAll(async () => {
  await server.close();
  rmSync(dir, { recursive: true, force: true });
});

const bucketAt = (bucket: string) =>
  openBucket({
    ...{ endpoint: `http://127.0.0.1:${port}`, region: 'us-east-1', bucket },
    ...{ accessKeyId: 'S3RVER', secretAccessKey: 'S3RVER' },
  });
const STORES: readonly (readonly [string, BlobStore])[] = [
  ['a folder', openFolder(path.join(dir, 'files'))],
  ['a bucket', bucketAt('pictures')],
];

const nameFor = (bytes: Uint8Array, organisationId: string = randomUUID()) =>
  blobName(organisationId, createHash('sha256').update(bytes).digest('hex'), 'original');

async function namesIn(store: BlobStore, prefix: string): Promise<string[]> {
  const names: string[] = [];
  for await (const { name } of store.list(prefix)) names.push(name);
  return names.sort();
}

describe.each(STORES)('%s', (_, store) => {
  it('gives back what was put, byte for byte, and says what is missing', async () => {
    const bytes = Buffer.from(Array.from({ length: 70_000 }, (_, at) => at % 256));
    const name = nameFor(bytes);
    expect([await store.get(name), await store.has(name)]).toEqual(['missing', false]);
    await store.put(name, bytes);
    await store.put(name, bytes);
    const back = await store.get(name);
    expect(back !== 'missing' && Buffer.compare(back, bytes)).toBe(0);
    expect(await store.has(name)).toBe(true);
  });

  it('takes away, and minds nothing that is not there', async () => {
    const name = nameFor(Buffer.from('gone'));
    await store.put(name, Buffer.from('gone'));
    await store.remove(name);
    await store.remove(name);
    expect(await store.get(name)).toBe('missing');
  });

  it('lists one organisation’s files and nobody else’s, with when they were put', async () => {
    const [one, other] = [randomUUID(), randomUUID()];
    const ours = ['a', 'b', 'c'].map((text) => nameFor(Buffer.from(text), one));
    for (const name of [...ours, nameFor(Buffer.from('a'), other)]) await store.put(name, Buffer.from('x'));
    expect(await namesIn(store, `${one}/`)).toEqual([...ours].sort());
    for await (const { putAt } of store.list(`${one}/`))
      expect(Math.abs(Date.now() - putAt.getTime())).toBeLessThan(60_000);
    expect(await namesIn(store, `${randomUUID()}/`)).toEqual([]);
  });

  it.each(['../../etc/passwd', `${randomUUID()}/../x`, '', '/', `${randomUUID()}/${'0'.repeat(64)}/../large`])(
    'has no file called %j, and looks for none',
    async (name) => {
      await expect(async () => store.put(name, Buffer.from('x'))).rejects.toThrow('is no name of a blob');
      await expect(async () => store.get(name)).rejects.toThrow('is no name of a blob');
    },
  );
});

describe('a folder', () => {
  it('holds no half file where writing fails, and says why', async () => {
    const root = path.join(dir, 'shut');
    const store = openFolder(root);
    const name = nameFor(Buffer.from('first'));
    await store.put(name, Buffer.from('first'));
    const folder = path.join(root, path.dirname(name));
    rmSync(folder, { recursive: true });
    // A file where a folder should be: nothing can be written below it, even by a user who may everything.
    writeFileSync(folder, '');
    await expect(store.put(name, Buffer.from('first'))).rejects.toThrow(/ENOTDIR|EEXIST/);
    expect(readdirSync(path.dirname(folder))).toEqual([path.basename(folder)]);
  });
});

describe('a bucket', () => {
  it('that is not there is a fault, not a file that is missing', async () => {
    await expect(bucketAt('nobodys').get(nameFor(Buffer.from('x')))).rejects.toThrow();
  });
});
