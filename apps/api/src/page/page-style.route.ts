/** GET /page.css: the look of the plain pages. */
import { readFileSync } from 'node:fs';
import { routes } from '../openapi/declare.ts';

const STYLE = readFileSync(new URL('page.css', import.meta.url), 'utf8');

export function pageStyleRoute() {
  return routes().get('/page.css', (c) =>
    c.body(STYLE, 200, { 'content-type': 'text/css; charset=utf-8', 'cache-control': 'public, max-age=3600' }),
  );
}
