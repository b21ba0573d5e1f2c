/** GET /outbox: the letters that a mail server would have sent. Only where the host has given an outbox: the demo. */
import type { Mail } from '@garboard/accounts/mail.ts';
import { html } from 'hono/html';
import type { Deps } from '../deps.ts';
import { routes } from '../openapi/declare.ts';
import { humanPage } from '../page/human-page.ts';
import { problem } from '../problem/problem.ts';

export function outboxRoute({ outbox }: Deps) {
  return routes().get('/outbox', (c) => {
    if (!outbox) return problem(c, 'not-found');
    c.header('cache-control', 'no-store');
    const letters = outbox.letters();
    return humanPage(c, 200, 'Letters not sent', [
      'This demo sends no mail. What it would have sent is here, the latest first, until the program stops.',
      ...(letters.length === 0 ? ['Nothing yet.'] : letters.map(toPage)),
    ]);
  });
}

const LINK = /^https?:\/\/[^/]+(\/\S*)$/;

/** Links lead to this very page's own host, so that a session opened here is a session there. */
function toPage({ to, subject, text }: Mail) {
  const lines = text.split('\n\n').map((line) => {
    const path = LINK.exec(line)?.[1];
    return path ? html`<br><a href="${path}">${line}</a>` : html`<br>${line}`;
  });
  return html`<b>${subject}</b><br><span class="quiet">to ${to}</span>${lines}`;
}
