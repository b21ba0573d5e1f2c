/** GET /openapi.json: the contract, as generated from the routes. */
import { createHash } from 'node:crypto';
import type { OpenAPIHono } from '@hono/zod-openapi';
import type { ApiEnv, Deps } from '../deps.ts';
import { routes } from './declare.ts';
import { openApiDocument } from './document.ts';

export function openApiRoute(app: OpenAPIHono<ApiEnv>, deps: Deps) {
  const text = JSON.stringify(openApiDocument(app, deps));
  const etag = `"${createHash('sha256').update(text).digest('base64url').slice(0, 16)}"`;
  return routes().get('/openapi.json', (c) =>
    c.body(text, 200, { 'content-type': 'application/json', 'cache-control': 'no-cache', etag }),
  );
}
