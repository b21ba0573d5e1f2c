/** Sends a file piece by piece until it is kept; after a cut it goes on from where it is safe. */
import { ApiProblem } from '@garboard/client/api-problem.ts';
import type { components } from '@garboard/client/generated/api.d.ts';
import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex } from '@noble/hashes/utils.js';
import { api } from '../api/client.ts';
import { newKey } from '../api/new-key.ts';
import { type Versioned, versioned } from '../api/versioned.ts';

type Upload = components['schemas']['Upload'];
export type Frame = Pick<components['schemas']['NewUpload'], 'zone' | 'point' | 'visitId' | 'words'>;

/** `refused` completes "the file …". */
export type Kept =
  | { readonly kind: 'kept'; readonly evidenceId: string }
  | { readonly kind: 'refused'; readonly why: string };

const PIECE = 512 * 1024;
const TRIES = 4;
const FIRST_WAIT_MS = 400;

/** Throws where the network stays away. `onSafe` is told how much has arrived, from 0 to 1. */
export async function keepFile(
  vesselId: string,
  file: Blob,
  frame: Frame,
  onSafe: (share: number) => void,
): Promise<Kept> {
  const bytes = new Uint8Array(await file.arrayBuffer());
  const body = { ...frame, sha256: bytesToHex(sha256(bytes)), bytes: bytes.length };
  const params = { path: { vesselId }, header: { 'Idempotency-Key': newKey() } };
  let upload = await patiently(() => versioned(api.POST('/v1/vessels/{vesselId}/uploads', { params, body })));
  while (upload.data.state === 'receiving') {
    onSafe(upload.data.received / bytes.length);
    upload = await patiently(
      () => sendPiece(upload, bytes),
      () => standing(upload.data.id),
    );
  }
  const { evidenceId, refused } = upload.data;
  return evidenceId ? { kind: 'kept', evidenceId } : { kind: 'refused', why: refused ?? '' };
}

function sendPiece({ data, version }: Versioned<Upload>, bytes: Uint8Array): Promise<Versioned<Upload>> {
  const piece = bytes.subarray(data.received, data.received + PIECE);
  return versioned(
    api.PATCH('/v1/uploads/{uploadId}', {
      params: { path: { uploadId: data.id }, header: { 'If-Match': version } },
      headers: { 'content-type': 'application/octet-stream' },
      body: piece as unknown as string,
      bodySerializer: (whole) => whole,
    }),
  );
}

const standing = (uploadId: string) => versioned(api.GET('/v1/uploads/{uploadId}', { params: { path: { uploadId } } }));

/** Tries again where no answer came; before that it may ask how things stand, for the piece may have arrived. */
async function patiently<T>(act: () => Promise<T>, instead: () => Promise<T> = act): Promise<T> {
  let next = act;
  for (let tried = 1; ; tried++) {
    try {
      return await next();
    } catch (fault) {
      const isLost = !(fault instanceof ApiProblem) || fault.problem.status === 412 || fault.problem.status >= 500;
      if (!isLost || tried === TRIES) throw fault;
      await new Promise((resolve) => setTimeout(resolve, FIRST_WAIT_MS * 2 ** tried));
      next = instead;
    }
  }
}
