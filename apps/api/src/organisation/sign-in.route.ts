/** GET /sign-in/{token}: a one-time link signs a person in and leads to the dashboard. */
import { useSignInLink } from '@garboard/actions/organisation/sign-in.ts';
import { readToken } from '@garboard/db/organisation/token.ts';
import type { Context } from 'hono';
import type { ApiEnv, Deps } from '../deps.ts';
import { routes } from '../openapi/declare.ts';
import { humanPage } from '../page/human-page.ts';

export function signInRoute({ accounts, pools, now }: Deps) {
  return routes().get('/sign-in/:token', async (c) => {
    c.header('cache-control', 'no-store');
    if (c.req.method === 'HEAD') return c.body(null, 200);
    const link = c.req.param('token');
    const by = accounts && (await useSignInLink(pools.app, link, now(), c.var.requestId));
    const cookie = by && (await accounts.openSession(by.personId, by.organisationId));
    if (!cookie) return refuse(c, readToken(link)?.kind === 'sign_in_link');
    c.header('set-cookie', cookie);
    return c.redirect('/', 303);
  });
}

/** Used, expired and never issued look alike: a guess learns nothing. */
function refuse(c: Context<ApiEnv>, looksLikeALink: boolean) {
  return looksLikeALink
    ? humanPage(c, 410, 'This link does not open any more', [
        'A sign-in link works once, and only for a short time.',
        'Ask whoever sent it for a new one.',
      ])
    : humanPage(c, 404, 'There is no such link', [
        'The address is not complete. Copy the whole link, or open it from where it was sent.',
      ]);
}
