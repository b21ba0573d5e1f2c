/**
 * Takes the next piece of a file. With the last one the file is looked at and kept, or refused; either way the upload
 * says so from then on. A piece that was acknowledged is safe: whoever is cut off reads how far it came and goes on.
 */
import type { Files } from '@garboard/blobs/files.ts';
import { insertPiece, lockUpload, saveUpload, type UploadRecord } from '@garboard/db/evidence/uploads.ts';
import { pieceFault } from '@garboard/domain/evidence/evidence.ts';
import type { ActionContext } from '../context.ts';
import { done, refused, type Written } from '../result.ts';
import { write } from '../write.ts';
import { finishUpload } from './finish-upload.ts';

export type Piece = { readonly uploadId: string; readonly expectedVersion: number; readonly body: Buffer };
type Refusal = 'not_found' | 'stale' | 'conflict' | 'invalid';

export async function addPiece(
  ctx: ActionContext,
  files: Files,
  piece: Piece,
): Promise<Written<UploadRecord, Refusal>> {
  const added = await write(ctx, 'answer_findings', (write) => add(write, piece));
  if (!added.ok) return added;
  const { received, bytes, fate } = added.value;
  if (received < bytes || fate.kind !== 'receiving') return added;
  return finishUpload(ctx, files, added.value);
}

async function add(
  { tx, ctx }: Parameters<Parameters<typeof write>[2]>[0],
  { uploadId, expectedVersion, body }: Piece,
): Promise<Written<UploadRecord, Refusal>> {
  const upload = await lockUpload(tx, uploadId);
  if (!upload) return refused({ kind: 'not_found' });
  if (upload.version !== expectedVersion) return refused({ kind: 'stale', version: upload.version });
  if (upload.fate.kind !== 'receiving')
    return refused({ kind: 'conflict', detail: `The file is ${upload.fate.kind} already.` });
  const detail = pieceFault(upload, body.length);
  if (detail !== null) return refused({ kind: 'invalid', errors: [{ pointer: '', detail }] });
  if (body.length === 0) return done(upload);
  const after = { ...upload, received: upload.received + body.length };
  await insertPiece(tx, ctx.organisationId, upload, body);
  await saveUpload(tx, upload, after);
  return done({ ...after, version: upload.version + 1 });
}
