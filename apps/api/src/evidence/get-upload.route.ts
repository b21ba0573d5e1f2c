/** GET /v1/uploads/{uploadId}: how far a file has come. */
import { Upload } from '@garboard/contract/evidence/evidence.ts';
import { loadUpload } from '@garboard/db/evidence/uploads.ts';
import { createRoute } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import { READ_ONE_PROBLEMS, routes, SIGNED_IN, UploadPath, versioned } from '../openapi/declare.ts';
import { access } from '../organisation/access.ts';
import { problem } from '../problem/problem.ts';
import { read } from '../request/action-context.ts';
import { etagOf } from '../request/etag.ts';
import { presentUpload } from './present-evidence.ts';

const route = createRoute({
  method: 'get',
  path: '/v1/uploads/{uploadId}',
  operationId: 'getUpload',
  tags: ['Evidence'],
  summary: 'Read how far a file has come',
  description:
    'After a cut: `received` bytes are safe, and the next piece begins there. An upload is forgotten after a week, what was kept of it is not.',
  security: SIGNED_IN,
  request: { params: UploadPath },
  responses: { 200: versioned(Upload, 'The upload.'), ...READ_ONE_PROBLEMS },
});

export function getUploadRoute(deps: Deps) {
  return routes().openapi({ ...route, middleware: access(deps, 'read') }, async (c) => {
    const upload = await read(c, deps, (tx) => loadUpload(tx, c.req.valid('param').uploadId));
    if (!upload) return problem(c, 'not-found');
    c.header('etag', etagOf(upload.version));
    return c.json(presentUpload(upload), 200);
  });
}
