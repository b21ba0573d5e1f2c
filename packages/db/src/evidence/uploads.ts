/** Files on their way: what has come of each, piece by piece. */
import type { EvidenceSaid, Fate } from '@garboard/domain/evidence/evidence.ts';
import type { Selectable } from 'kysely';
import type { Scoped } from '../scope.ts';
import type { UploadTable } from './tables.ts';

/** `sha256` in lower-case hexadecimal. */
export type UploadRecord = {
  readonly id: string;
  readonly vesselId: string;
  readonly said: EvidenceSaid;
  readonly sha256: string;
  readonly bytes: number;
  readonly received: number;
  readonly fate: Fate;
  readonly createdBy: string;
  readonly createdAt: Date;
  readonly version: number;
};

export async function insertUpload(tx: Scoped, organisationId: string, upload: UploadRecord): Promise<void> {
  await tx
    .insertInto('upload')
    .values({
      organisation_id: organisationId,
      id: upload.id,
      vessel_id: upload.vesselId,
      said: JSON.stringify(upload.said),
      sha256: Buffer.from(upload.sha256, 'hex'),
      bytes: upload.bytes,
      created_by: upload.createdBy,
      created_at: upload.createdAt,
    })
    .execute();
}

export async function loadUpload(tx: Scoped, id: string): Promise<UploadRecord | null> {
  const row = await tx.selectFrom('upload').selectAll().where('id', '=', id).executeTakeFirst();
  return row ? toUpload(row) : null;
}

/** Pieces of one file come one after another, whoever sends them. */
export async function lockUpload(tx: Scoped, id: string): Promise<UploadRecord | null> {
  const row = await tx.selectFrom('upload').selectAll().where('id', '=', id).forUpdate().executeTakeFirst();
  return row ? toUpload(row) : null;
}

export async function insertPiece(
  tx: Scoped,
  organisationId: string,
  { id, vesselId, received }: UploadRecord,
  body: Buffer,
): Promise<void> {
  await tx
    .insertInto('upload_piece')
    .values({ organisation_id: organisationId, upload_id: id, vessel_id: vesselId, from_byte: received, body })
    .execute();
}

export async function loadPieces(tx: Scoped, uploadId: string): Promise<Buffer> {
  const rows = await tx
    .selectFrom('upload_piece')
    .select('body')
    .where('upload_id', '=', uploadId)
    .orderBy('from_byte')
    .execute();
  return Buffer.concat(rows.map(({ body }) => body));
}

/** As it stands after a change; the version counts on. */
export async function saveUpload(
  tx: Scoped,
  { id, version }: UploadRecord,
  { received, fate }: Pick<UploadRecord, 'received' | 'fate'>,
): Promise<void> {
  await tx
    .updateTable('upload')
    .set({
      received,
      evidence_id: fate.kind === 'kept' ? fate.evidenceId : null,
      refused: fate.kind === 'refused' ? fate.because : null,
      version: version + 1,
    })
    .where('id', '=', id)
    .execute();
  if (fate.kind !== 'receiving') await tx.deleteFrom('upload_piece').where('upload_id', '=', id).execute();
}

/** How many were forgotten. */
export async function forgetUploads(tx: Scoped, before: Date): Promise<number> {
  const { numDeletedRows } = await tx.deleteFrom('upload').where('created_at', '<', before).executeTakeFirstOrThrow();
  return Number(numDeletedRows);
}

function toUpload(row: Selectable<UploadTable>): UploadRecord {
  const { id, said, bytes, received, version } = row;
  return {
    ...{ id, said, bytes, received, version },
    vesselId: row.vessel_id,
    sha256: row.sha256.toString('hex'),
    fate: fateOf(row),
    createdBy: row.created_by,
    createdAt: row.created_at,
  };
}

function fateOf({ evidence_id, refused }: Selectable<UploadTable>): Fate {
  if (evidence_id !== null) return { kind: 'kept', evidenceId: evidence_id };
  return refused === null ? { kind: 'receiving' } : { kind: 'refused', because: refused };
}
