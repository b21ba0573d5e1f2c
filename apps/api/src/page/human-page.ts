/** A plain page for people: words on paper, no script. */
import type { Context } from 'hono';
import { html } from 'hono/html';
import type { ContentfulStatusCode } from 'hono/utils/http-status';
import type { ApiEnv } from '../deps.ts';

type Paragraph = string | ReturnType<typeof html>;

export function humanPage(
  c: Context<ApiEnv>,
  status: ContentfulStatusCode,
  heading: string,
  paragraphs: readonly Paragraph[],
) {
  return c.html(
    html`<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${heading}</title>
<link rel="stylesheet" href="/page.css">
</head>
<body>
<main>
<h1>${heading}</h1>
${paragraphs.map((text) => html`<p>${text}</p>`)}
</main>
</body>
</html>
`,
    status,
  );
}
