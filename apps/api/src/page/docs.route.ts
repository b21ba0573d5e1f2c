/** GET /docs: the reference for people, made in the browser from /openapi.json. Everything comes from this host. */
import { createRequire } from 'node:module';
import path from 'node:path';
import { html } from 'hono/html';
import { routes } from '../openapi/declare.ts';
import { problem } from '../problem/problem.ts';
import { contentType, openFolder } from '../static/static-folder.ts';

const FILES = ['swagger-ui.css', 'swagger-ui-bundle.js', 'favicon-32x32.png'];

/** The validator is a service elsewhere: it is switched off. */
const START = `SwaggerUIBundle({
  url: '/openapi.json',
  dom_id: '#reference',
  deepLinking: true,
  validatorUrl: null,
  presets: [SwaggerUIBundle.presets.apis],
  layout: 'BaseLayout',
});
`;

export function docsRoute() {
  const folder = openFolder(path.dirname(createRequire(import.meta.url).resolve('swagger-ui-dist/package.json')));
  return routes()
    .get('/docs', (c) => c.html(PAGE))
    .get('/docs/start.js', (c) =>
      c.body(START, 200, { 'content-type': contentType('start.js'), 'cache-control': 'no-cache' }),
    )
    .get('/docs/:file', async (c) => {
      const file = FILES.find((name) => name === c.req.param('file'));
      if (!file) return problem(c, 'not-found');
      return c.body(await folder.read(file), 200, {
        'content-type': contentType(file),
        'cache-control': 'public, max-age=86400',
      });
    });
}

const PAGE = html`<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>Garboard API</title>
<link rel="icon" href="/docs/favicon-32x32.png">
<link rel="stylesheet" href="/docs/swagger-ui.css">
</head>
<body>
<div id="reference"></div>
<script src="/docs/swagger-ui-bundle.js"></script>
<script src="/docs/start.js"></script>
</body>
</html>
`;
