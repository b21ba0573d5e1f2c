/** Short ways to photographs and files, through the actions and nothing else. */
import { createHash, randomInt } from 'node:crypto';
import type { ActionContext } from '@garboard/actions/context.ts';
import { addPiece } from '@garboard/actions/evidence/add-piece.ts';
import { type NewUpload, startUpload } from '@garboard/actions/evidence/start-upload.ts';
import type { UploadRecord } from '@garboard/db/evidence/uploads.ts';
import sharp from 'sharp';
import { files } from './files.ts';
import { accepted } from './organisation.ts';

export const sha256Of = (bytes: Uint8Array): string => createHash('sha256').update(bytes).digest('hex');

/** A picture of one colour and some noise: no two are alike. */
export function aJpeg(width = 64, height = 48): Promise<Buffer> {
  const background = { r: randomInt(256), g: randomInt(256), b: randomInt(256) };
  const noise = { type: 'gaussian', mean: 128, sigma: 30 } as const;
  return sharp({ create: { width, height, channels: 3, background, noise } })
    .jpeg()
    .toBuffer();
}

const NOTHING_SAID: NewUpload['said'] = { words: null, zone: null, point: null, visitId: null, takenOn: null };

export async function anUpload(
  ctx: ActionContext,
  vesselId: string,
  bytes: Uint8Array,
  said: Partial<NewUpload['said']> = {},
): Promise<UploadRecord> {
  const file = { vesselId, sha256: sha256Of(bytes), bytes: bytes.length };
  return accepted(await startUpload(ctx, { ...file, said: { ...NOTHING_SAID, ...said } }));
}

let usual: Promise<Buffer> | undefined;

/** The id of a photograph that is kept; which one it is matters to few. */
export async function aPhotograph(
  ctx: ActionContext,
  vesselId: string,
  said: Partial<NewUpload['said']> = {},
  bytes?: Buffer,
): Promise<string> {
  usual ??= aJpeg();
  const body = bytes ?? (await usual);
  const { id } = await anUpload(ctx, vesselId, body, said);
  const { fate } = accepted(await addPiece(ctx, files, { uploadId: id, expectedVersion: 1, body }));
  if (fate.kind !== 'kept') throw new Error(`the photograph is ${JSON.stringify(fate)}`);
  return fate.evidenceId;
}
