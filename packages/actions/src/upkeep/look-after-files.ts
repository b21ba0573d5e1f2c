/** The store of files against what is on record: what nobody refers to goes, what is missing is said. */
import type { BlobStore } from '@garboard/blobs/blob-store.ts';
import { blobName, hashIn } from '@garboard/blobs/evidence/names.ts';
import { isKept, loadKeptHashes } from '@garboard/db/evidence/evidence.ts';
import { tryLockBlob } from '@garboard/db/evidence/lock-blob.ts';
import { forgetUploads } from '@garboard/db/evidence/uploads.ts';
import type { Db } from '@garboard/db/pool.ts';
import { inOrganisation, wholeFleet } from '@garboard/db/scope.ts';

const HOUR_MS = 3_600_000;
/** An upload that nobody went on with is given up after this. House convention, no source. */
const UPLOAD_MS = 7 * 24 * HOUR_MS;
/** A file that nothing refers to is left alone for so long, in case somebody is looking into what went wrong. House convention, no source. */
const ORPHAN_MS = 24 * HOUR_MS;

type Of = { readonly db: Db; readonly store: BlobStore; readonly organisationId: string };
export type Swept = { readonly uploads: number; readonly files: number };

/** Forgets uploads that stopped half way, and takes away files that no record refers to. */
export async function sweepFiles({ db, store, organisationId }: Of, now: Date): Promise<Swept> {
  const scope = wholeFleet(organisationId);
  const uploads = await inOrganisation(db, scope, (tx) => forgetUploads(tx, new Date(now.getTime() - UPLOAD_MS)));
  const kept = new Set(await inOrganisation(db, scope, loadKeptHashes));
  const before = now.getTime() - ORPHAN_MS;
  let files = 0;
  for await (const { name, putAt } of store.list(`${organisationId}/`)) {
    if (kept.has(hashIn(name)) || putAt.getTime() >= before) continue;
    if (await removeIfNobodys({ db, store, organisationId }, name)) files++;
  }
  return { uploads, files };
}

/** Whoever keeps the same file at this moment holds its lock until the record is there to be seen. */
function removeIfNobodys({ db, store, organisationId }: Of, name: string): Promise<boolean> {
  return inOrganisation(db, wholeFleet(organisationId), async (tx) => {
    const sha256 = hashIn(name);
    if (!(await tryLockBlob(tx, organisationId, sha256)) || (await isKept(tx, sha256))) return false;
    await store.remove(name);
    return true;
  });
}

/** How many files on record are not in the store. What can be drawn again from the original is not missed. */
export async function countMissing({ db, store, organisationId }: Of): Promise<{ kept: number; missing: number }> {
  const hashes = await inOrganisation(db, wholeFleet(organisationId), loadKeptHashes);
  const there = new Set<string>();
  for await (const { name } of store.list(`${organisationId}/`)) there.add(name);
  const missing = hashes.filter((sha256) => !there.has(blobName(organisationId, sha256, 'original')));
  return { kept: hashes.length, missing: missing.length };
}
