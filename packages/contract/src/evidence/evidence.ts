/** Photographs and papers: files that show something, and how they come here piece by piece. */
import * as z from 'zod';
import { ZoneCode } from '../finding/codes.ts';
import { CalendarDay, Id, Instant, pageOf, words } from '../shared.ts';

const Sha256 = z
  .string()
  .regex(/^[0-9a-f]{64}$/, 'must be a SHA-256 in lower-case hexadecimal')
  .meta({
    description: 'SHA-256 of the whole file, in lower-case hexadecimal.',
    example: '9f86d081884c7d659a2feaa0c55ad015a3bf4f1b2b0b822cd15d6c15b0f00a08',
  });

/** A photograph of a telephone has three to twelve megabytes; a certificate as PDF less. House convention, no source. */
const LARGEST = 20 * 1024 * 1024;

const said = {
  words: words(500).optional().meta({ description: 'What it shows.', example: 'Crack at the inner radius' }),
  zone: ZoneCode.optional(),
  point: words(80).optional().meta({
    description: 'The survey point, named the same at every visit; with `zone` only.',
    example: 'port chainplate',
  }),
  visitId: Id.optional().meta({ description: 'The survey visit on which it was taken.' }),
};

const VESSEL_ID = '0198c5a2-7b1e-7c3d-9a41-5f2e8d7c6b5a';
const SHA256 = '9f86d081884c7d659a2feaa0c55ad015a3bf4f1b2b0b822cd15d6c15b0f00a08';

export const NewUpload = z
  .strictObject({
    sha256: Sha256,
    bytes: z.int().min(1).max(LARGEST).meta({ description: 'How long the file is; at most 20 MiB.' }),
    ...said,
    takenOn: CalendarDay.optional().meta({ description: 'Not in the future; without it: today.' }),
  })
  .meta({
    id: 'NewUpload',
    example: { sha256: SHA256, bytes: 2_481_152, words: 'Crack at the inner radius', zone: 'mast_and_rigging' },
  });
export type NewUpload = z.infer<typeof NewUpload>;

const EVIDENCE_EXAMPLE = {
  id: '0198c5a7-4c10-7e21-9a3b-4c5d6e7f8092',
  vesselId: VESSEL_ID,
  kind: 'photograph' as const,
  words: 'Crack at the inner radius',
  zone: 'mast_and_rigging',
  takenOn: '2026-11-24',
  mediaType: 'image/jpeg' as const,
  bytes: 2_481_152,
  sizePx: { width: 4032, height: 3024 },
  sha256: SHA256,
  recordedAt: '2026-11-24T15:04:00Z',
  recordedBy: 'person:0198c5a4-6f0a-7a11-9c3d-2b4e6f8a0c1e',
};

export const EvidenceFile = z
  .object({
    id: Id,
    vesselId: Id,
    kind: z.enum(['photograph', 'document']),
    ...said,
    takenOn: CalendarDay,
    mediaType: z.enum(['image/jpeg', 'image/png', 'image/webp', 'image/avif', 'image/heic', 'application/pdf']),
    bytes: z.int(),
    sizePx: z
      .object({ width: z.int(), height: z.int() })
      .optional()
      .meta({ description: 'Upright. Absent where it is kept and can be taken, but not shown here.' }),
    sha256: Sha256,
    recordedAt: Instant,
    recordedBy: z.string(),
  })
  .meta({ id: 'EvidenceFile', example: EVIDENCE_EXAMPLE });
export type EvidenceFile = z.infer<typeof EvidenceFile>;

export const EvidenceFilePage = pageOf(EvidenceFile, 'EvidenceFilePage');
export type EvidenceFilePage = z.infer<typeof EvidenceFilePage>;

export const Upload = z
  .object({
    id: Id,
    vesselId: Id,
    sha256: Sha256,
    bytes: z.int(),
    received: z.int().meta({ description: 'So many bytes are safe here; the next piece begins there.' }),
    state: z.enum(['receiving', 'kept', 'refused']).meta({
      description: '`kept`: the file with this hash is in the store and on record. `refused`: it never will be.',
    }),
    evidenceId: Id.optional().meta({ description: 'What it was kept as.' }),
    refused: z.string().optional().meta({ description: 'Why it was; completes “the file …”.' }),
  })
  .meta({
    id: 'Upload',
    example: {
      id: '0198c5a7-4c10-7e21-9a3b-4c5d6e7f8091',
      vesselId: VESSEL_ID,
      ...{ sha256: SHA256, bytes: 2_481_152, received: 1_048_576, state: 'receiving' },
    },
  });
export type Upload = z.infer<typeof Upload>;
