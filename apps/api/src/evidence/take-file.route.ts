/** GET /v1/evidence/{evidenceId}/view and …/original: the picture to show, and what came, to take away. */
import { partOf } from '@garboard/actions/evidence/part-of.ts';
import type { Part } from '@garboard/blobs/evidence/names.ts';
import { EvidenceFile } from '@garboard/contract/evidence/evidence.ts';
import { type EvidenceRecord, loadEvidence } from '@garboard/db/evidence/evidence.ts';
import { createRoute, z } from '@hono/zod-openapi';
import type { Context } from 'hono';
import type { ApiEnv, Deps } from '../deps.ts';
import { EvidencePath, file, problems, READ_PROBLEMS, routes, SIGNED_IN } from '../openapi/declare.ts';
import { access, callerOf } from '../organisation/access.ts';
import { problem } from '../problem/problem.ts';
import { read } from '../request/action-context.ts';

const JPEG = 'image/jpeg';

const size = z
  .enum(['large', 'small'])
  .default('large')
  .meta({ description: 'At most 1600 or 360 pixels on the longer side.', default: 'large', example: 'small' });

const view = createRoute({
  method: 'get',
  path: '/v1/evidence/{evidenceId}/view',
  operationId: 'showEvidence',
  tags: ['Evidence'],
  summary: 'Show a photograph',
  description:
    'Drawn anew as JPEG, upright, without position, camera or anything else that the original may tell. A PDF, and a HEIC, are not shown: 404.',
  security: SIGNED_IN,
  request: { params: EvidencePath, query: z.strictObject({ size }) },
  responses: { 200: file('The picture.', JPEG), ...READ_PROBLEMS, ...problems('not-found', 'file-missing') },
});

export function showEvidenceRoute(deps: Deps) {
  return routes().openapi({ ...view, middleware: access(deps, 'read') }, (c) =>
    answer(c, deps, c.req.valid('param').evidenceId, c.req.valid('query').size, (record) => ({
      'content-type': JPEG,
      etag: `"${record.sha256}-${c.req.valid('query').size}"`,
    })),
  );
}

const original = createRoute({
  method: 'get',
  path: '/v1/evidence/{evidenceId}/original',
  operationId: 'takeOriginal',
  tags: ['Evidence'],
  summary: 'Take a file as it came',
  description:
    'Byte for byte, with all that it may tell of position and camera; always to be saved, never to be shown. For `owner`, `manager` and `surveyor`.',
  security: SIGNED_IN,
  request: { params: EvidencePath },
  responses: {
    200: file('The file.', ...EvidenceFile.shape.mediaType.options),
    ...problems('unauthenticated', 'forbidden', 'not-found', 'file-missing', 'fault'),
  },
});

export function takeOriginalRoute(deps: Deps) {
  return routes().openapi({ ...original, middleware: access(deps, 'take_originals') }, (c) =>
    answer(c, deps, c.req.valid('param').evidenceId, 'original', (record) => ({
      'content-type': record.mediaType,
      'content-disposition': `attachment; filename="${nameOf(record)}"`,
      etag: `"${record.sha256}"`,
    })),
  );
}

/** A name of our own making: whatever the file was called at home is not known here. */
function nameOf({ takenOn, sha256, mediaType }: EvidenceRecord): string {
  return `${takenOn}-${sha256.slice(0, 8)}.${mediaType.split('/')[1]?.replace('jpeg', 'jpg')}`;
}

/** Bytes that somebody sent never act on their own, however they are opened. */
const INERT = { 'content-security-policy': "default-src 'none'; sandbox", 'x-content-type-options': 'nosniff' };
/** The same address is always the same bytes. */
const FOR_EVER = { 'cache-control': 'private, max-age=31536000, immutable' };

async function answer(
  c: Context<ApiEnv>,
  deps: Deps,
  evidenceId: string,
  part: Part,
  headersOf: (record: EvidenceRecord) => Record<string, string>,
) {
  const record = await read(c, deps, (tx) => loadEvidence(tx, evidenceId));
  if (!record) return problem(c, 'not-found');
  const { organisationId } = callerOf(c);
  const bytes = await partOf(deps.files, { organisationId, sha256: record.sha256 }, part);
  if (bytes === 'missing') return problem(c, 'file-missing');
  return c.body(new Uint8Array(bytes), 200, { ...INERT, ...FOR_EVER, ...headersOf(record) });
}
