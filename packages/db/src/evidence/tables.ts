/** Photographs, papers and files on their way, as Kysely sees them. */
import type { EvidenceSaid } from '@garboard/domain/evidence/evidence.ts';
import type { Generated } from 'kysely';
import type { Instant, Json } from '../column.ts';

export type EvidenceTable = {
  organisation_id: string;
  id: string;
  vessel_id: string;
  visit_id: string | null;
  zone: string | null;
  point: string | null;
  words: string | null;
  taken_on: string;
  sha256: Buffer;
  media_type: string;
  bytes: number;
  width_px: number | null;
  height_px: number | null;
  recorded_by: string;
  recorded_at: Instant;
};

export type UploadTable = {
  organisation_id: string;
  id: string;
  vessel_id: string;
  said: Json<EvidenceSaid>;
  sha256: Buffer;
  bytes: number;
  received: Generated<number>;
  evidence_id: string | null;
  refused: string | null;
  created_by: string;
  created_at: Instant;
  version: Generated<number>;
};

export type UploadPieceTable = {
  organisation_id: string;
  upload_id: string;
  vessel_id: string;
  from_byte: number;
  body: Buffer;
};
