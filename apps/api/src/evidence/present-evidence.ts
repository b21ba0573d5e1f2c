import type { EvidenceFile, Upload } from '@garboard/contract/evidence/evidence.ts';
import type { EvidenceRecord } from '@garboard/db/evidence/evidence.ts';
import type { UploadRecord } from '@garboard/db/evidence/uploads.ts';
import { withoutNulls } from '../request/without-nulls.ts';

export function presentEvidence({ mediaType, ...record }: EvidenceRecord): EvidenceFile {
  const kind = mediaType.startsWith('image/') ? 'photograph' : 'document';
  return { ...withoutNulls(record), kind, mediaType: mediaType as EvidenceFile['mediaType'] };
}

export function presentUpload({ id, vesselId, sha256, bytes, received, fate }: UploadRecord): Upload {
  const common = { id, vesselId, sha256, bytes, received };
  switch (fate.kind) {
    case 'receiving':
      return { ...common, state: fate.kind };
    case 'kept':
      return { ...common, state: fate.kind, evidenceId: fate.evidenceId };
    case 'refused':
      return { ...common, state: fate.kind, refused: fate.because };
  }
}
