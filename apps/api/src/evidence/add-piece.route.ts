/** PATCH /v1/uploads/{uploadId}: the next piece of a file. */
import { addPiece } from '@garboard/actions/evidence/add-piece.ts';
import { Upload } from '@garboard/contract/evidence/evidence.ts';
import { createRoute, z } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import { changed, IF_MATCH, octets, problems, routes, SIGNED_IN, UploadPath } from '../openapi/declare.ts';
import { access } from '../organisation/access.ts';
import { answerFailure } from '../problem/answer-failure.ts';
import { problem } from '../problem/problem.ts';
import { actionContext } from '../request/action-context.ts';
import { readIfMatch } from '../request/etag.ts';
import { octetBody } from '../request/octet-body.ts';
import { tellWritten } from '../request/written.ts';
import { presentUpload } from './present-evidence.ts';

const route = createRoute({
  method: 'patch',
  path: '/v1/uploads/{uploadId}',
  operationId: 'addPiece',
  tags: ['Evidence'],
  summary: 'Send the next piece of a file',
  description: [
    'What is acknowledged is safe. `If-Match` is required, so that no piece counts twice: after a cut read the upload',
    'and go on from `received`. With the last piece the file is looked at by its content, whatever its name was; if',
    'it has the hash that was announced and is a photograph or a PDF that can be opened within the limits, it is',
    '`kept`, else `refused` with the reason, and the answer says which.',
    'Was the last answer lost on the way while the state is still `receiving`, send an empty piece.',
  ].join(' '),
  security: SIGNED_IN,
  request: { params: UploadPath, headers: z.object(IF_MATCH), body: octets },
  responses: {
    200: changed(Upload, 'How far it has come.'),
    ...problems(
      'unauthenticated',
      'forbidden',
      'foreign-origin',
      'not-found',
      'conflict',
      'stale',
      'too-large',
      'unsupported-media-type',
      'invalid',
      'if-match-required',
      'fault',
    ),
  },
});

export function addPieceRoute(deps: Deps) {
  return routes().openapi({ ...route, middleware: [access(deps, 'answer_findings'), ...octetBody] }, async (c) => {
    const ifMatch = readIfMatch(c.req.header('if-match'));
    if (ifMatch.kind !== 'version') return problem(c, 'if-match-required');
    const { uploadId } = c.req.valid('param');
    const body = Buffer.from(await c.req.arrayBuffer());
    const piece = { uploadId, expectedVersion: ifMatch.version, body };
    const result = await addPiece(actionContext(c, deps, null), deps.files, piece);
    if (!result.ok) return answerFailure(c, result.failure);
    tellWritten(c, { version: result.value.version });
    return c.json(presentUpload(result.value), 200);
  });
}
