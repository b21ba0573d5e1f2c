/** POST /v1/vessels/{vesselId}/uploads: a file is announced. */
import { startUpload } from '@garboard/actions/evidence/start-upload.ts';
import { NewUpload, Upload } from '@garboard/contract/evidence/evidence.ts';
import { createRoute, z } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import {
  body,
  created,
  IDEMPOTENCY_KEY,
  problems,
  routes,
  SIGNED_IN,
  VesselPath,
  WRITE_PROBLEMS,
} from '../openapi/declare.ts';
import { access } from '../organisation/access.ts';
import { answerFailure } from '../problem/answer-failure.ts';
import { actionContext } from '../request/action-context.ts';
import { jsonBody } from '../request/json-body.ts';
import { tellWritten } from '../request/written.ts';
import { presentUpload } from './present-evidence.ts';

const route = createRoute({
  method: 'post',
  path: '/v1/vessels/{vesselId}/uploads',
  operationId: 'startUpload',
  tags: ['Evidence'],
  summary: 'Announce a file',
  description:
    'A photograph (JPEG, PNG, WebP, AVIF, HEIC) or a PDF: its length, its hash, and what it shows. Its bytes follow in pieces. For every role but `viewer`; on a survey visit for those who keep it.',
  security: SIGNED_IN,
  request: { params: VesselPath, headers: z.object(IDEMPOTENCY_KEY), body: body(NewUpload) },
  responses: { 201: created(Upload, 'Where its bytes are sent.'), ...WRITE_PROBLEMS, ...problems('not-found') },
});

export function startUploadRoute(deps: Deps) {
  return routes().openapi({ ...route, middleware: [access(deps, 'answer_findings'), ...jsonBody] }, async (c) => {
    const { vesselId } = c.req.valid('param');
    const asked = c.req.valid('json');
    const { sha256, bytes, words = null, zone = null, point = null, visitId = null, takenOn = null } = asked;
    const said = { words, zone, point, visitId, takenOn };
    const result = await startUpload(actionContext(c, deps, asked), { vesselId, sha256, bytes, said });
    if (!result.ok) return answerFailure(c, result.failure);
    const { value, replayed } = result;
    tellWritten(c, { location: `/v1/uploads/${value.id}`, version: value.version, replayed });
    return c.json(presentUpload(value), 201);
  });
}
