/**
 * A file of which every byte is here: its hash is worked out, it is looked at, put into the store and entered.
 * Broken off anywhere in between, the pieces are still there, and the end can be asked for again.
 */
import { createHash } from 'node:crypto';
import type { Inspected } from '@garboard/blobs/evidence/inspect.ts';
import { blobName } from '@garboard/blobs/evidence/names.ts';
import type { Files } from '@garboard/blobs/files.ts';
import { type EvidenceRecord, insertEvidence } from '@garboard/db/evidence/evidence.ts';
import { lockBlob } from '@garboard/db/evidence/lock-blob.ts';
import { loadPieces, lockUpload, saveUpload, type UploadRecord } from '@garboard/db/evidence/uploads.ts';
import { inOrganisation } from '@garboard/db/scope.ts';
import { lockVessel } from '@garboard/db/vessel/vessels.ts';
import type { Fate } from '@garboard/domain/evidence/evidence.ts';
import { audit } from '../audit.ts';
import type { ActionContext } from '../context.ts';
import { ofVisit } from '../finding/visit-of-sighting.ts';
import { newId } from '../new-id.ts';
import { done, type Refused, type Result, refused } from '../result.ts';
import { catchRefusal, type Write } from '../write.ts';

type Whole = { readonly bytes: Buffer; readonly inspected: Exclude<Inspected, { kind: 'refused' }> };
type Finished = Result<UploadRecord, 'not_found' | 'invalid'> | Refused<'forbidden' | 'key_reused'>;

export async function finishUpload(ctx: ActionContext, files: Files, upload: UploadRecord): Promise<Finished> {
  const bytes = await inOrganisation(ctx.db, ctx, (tx) => loadPieces(tx, upload.id));
  // Looked at outside of any transaction: nobody waits for a picture to be drawn.
  const inspected = await looked(files, bytes, upload);
  return catchRefusal(() =>
    inOrganisation(ctx.db, ctx, async (tx): Promise<Result<UploadRecord, 'not_found' | 'invalid'>> => {
      const write = { tx, ctx };
      await lockVessel(tx, upload.vesselId);
      const current = await lockUpload(tx, upload.id);
      if (!current) return refused({ kind: 'not_found' });
      // Somebody else asked for the end too, and was faster.
      if (current.fate.kind !== 'receiving') return done(current);
      if (inspected.kind === 'refused') return end(write, current, inspected);
      const { errors } = await ofVisit(write, upload.vesselId, upload.said.visitId);
      if (errors.length > 0) return end(write, current, { kind: 'refused', because: SEALED_MEANWHILE });
      const evidenceId = await keep(write, files, current, { bytes, inspected });
      return end(write, current, { kind: 'kept', evidenceId });
    }),
  );
}

const SEALED_MEANWHILE = 'came too late: the visit it belongs to is no longer open to it';

async function looked(files: Files, bytes: Buffer, { sha256 }: UploadRecord): Promise<Inspected> {
  const hash = createHash('sha256').update(bytes).digest('hex');
  return hash === sha256
    ? files.inspect(bytes)
    : { kind: 'refused', because: `has the hash ${hash} and not the one that was announced` };
}

async function end({ tx }: Write, upload: UploadRecord, fate: Fate): Promise<Result<UploadRecord, never>> {
  await saveUpload(tx, upload, { received: upload.received, fate });
  return done({ ...upload, fate, version: upload.version + 1 });
}

async function keep(write: Write, { store }: Files, upload: UploadRecord, whole: Whole): Promise<string> {
  const { tx, ctx } = write;
  const record = recordOf(write, upload, whole);
  await lockBlob(tx, ctx.organisationId, upload.sha256);
  for (const [part, bytes] of partsOf(whole)) {
    const name = blobName(ctx.organisationId, upload.sha256, part);
    // The same file was kept before; one that has gone missing since is put back.
    if (!(await store.has(name))) await store.put(name, bytes);
  }
  await insertEvidence(tx, ctx.organisationId, record);
  audit(write, { verb: 'keep_evidence', subject: 'evidence', subjectId: record.id, before: null, after: record });
  return record.id;
}

function partsOf({ bytes, inspected }: Whole) {
  const views = inspected.kind === 'picture' ? inspected.views : null;
  return [
    ['original', bytes] as const,
    ...(views ? ([['large', views.large] as const, ['small', views.small] as const] as const) : []),
  ];
}

function recordOf({ ctx }: Write, upload: UploadRecord, { inspected }: Whole): EvidenceRecord {
  return {
    id: newId(ctx.now),
    vesselId: upload.vesselId,
    ...upload.said,
    ...{ sha256: upload.sha256, bytes: upload.bytes, mediaType: inspected.mediaType },
    sizePx: inspected.kind === 'picture' ? { width: inspected.widthPx, height: inspected.heightPx } : null,
    recordedBy: upload.createdBy,
    recordedAt: ctx.now.toISOString(),
  };
}
