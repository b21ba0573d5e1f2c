/** GET /sign-in/{token}: a one-time link opens a session and leads to the dashboard. */
import { SESSION_DAYS, useSignInLink } from '@garboard/actions/organisation/session.ts';
import { readToken } from '@garboard/db/organisation/token.ts';
import type { Context } from 'hono';
import { setCookie } from 'hono/cookie';
import type { ApiEnv, Deps } from '../deps.ts';
import { routes } from '../openapi/declare.ts';
import { humanPage } from '../page/human-page.ts';
import { SESSION_COOKIE } from './access.ts';

export function signInRoute(deps: Deps) {
  return routes().get('/sign-in/:token', async (c) => {
    c.header('cache-control', 'no-store');
    if (c.req.method === 'HEAD') return c.body(null, 200);
    const link = c.req.param('token');
    const session = await useSignInLink(deps.pools.app, link, deps.now(), c.var.requestId);
    if (session === null) return refuse(c, readToken(link)?.kind === 'sign_in_link');
    setCookie(c, SESSION_COOKIE, session, {
      httpOnly: true,
      sameSite: 'Lax',
      path: '/',
      secure: deps.secureCookies ?? false,
      maxAge: SESSION_DAYS * 86_400,
    });
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
