/**
 * A store of files of the test run's own, and whoever looks at them as in the program. It lies in memory: that a folder
 * and a bucket keep what they were given is tested where they are.
 */
import { createHash } from 'node:crypto';
import type { BlobStore } from '@garboard/blobs/blob-store.ts';
import { checkName } from '@garboard/blobs/blob-store.ts';
import { type Inspected, inspect } from '@garboard/blobs/evidence/inspect.ts';
import type { Files } from '@garboard/blobs/files.ts';

const kept = new Map<string, { readonly bytes: Uint8Array; readonly putAt: Date }>();
const store: BlobStore = {
  put: async (name, bytes) => void kept.set(checkName(name), { bytes: Uint8Array.from(bytes), putAt: new Date() }),
  get: async (name) => kept.get(checkName(name))?.bytes ?? 'missing',
  has: async (name) => kept.has(checkName(name)),
  remove: async (name) => void kept.delete(checkName(name)),
  async *list(prefix) {
    for (const [name, { putAt }] of [...kept]) if (name.startsWith(prefix)) yield { name, putAt };
  },
};

const seen = new Map<string, Promise<Inspected>>();
/** The same small picture again and again is looked at once. */
const LITTLE = 20_000;

export const files: Files = {
  store,
  inspect: (bytes) => {
    if (bytes.length > LITTLE) return inspect(bytes);
    const key = createHash('sha256').update(bytes).digest('hex');
    const found = seen.get(key) ?? inspect(bytes);
    seen.set(key, found);
    return found;
  },
};
