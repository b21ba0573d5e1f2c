/** Who is asking, and whether their role may. Runs before anything else looks at the request. */
import { findCredential } from '@garboard/db/organisation/credentials.ts';
import { readToken } from '@garboard/db/organisation/token.ts';
import { inOrganisation, wholeFleet } from '@garboard/db/scope.ts';
import { may, type Permission } from '@garboard/domain/organisation/permission.ts';
import type { Context } from 'hono';
import { getCookie } from 'hono/cookie';
import { createMiddleware } from 'hono/factory';
import type { ApiEnv, Caller, Deps } from '../deps.ts';
import { problem } from '../problem/problem.ts';
import { isSameOrigin } from './same-origin.ts';

export const SESSION_COOKIE = 'garboard_session';

export function access(deps: Deps, permission: Permission) {
  return createMiddleware<ApiEnv>(async (c, next) => {
    c.header('cache-control', 'no-store');
    const caller = await findCaller(c, deps);
    if (!caller) return problem(c, 'unauthenticated', { headers: { 'www-authenticate': challenge(c) } });
    c.set('caller', caller);
    if (caller.actor.kind === 'session' && isWrite(c) && !isSameOrigin(c)) {
      return problem(c, 'foreign-origin');
    }
    if (!may(caller.actor.role, permission)) return problem(c, 'forbidden');
    return next();
  });
}

/** The caller of a request that has passed `access`. */
export function callerOf(c: Context<ApiEnv>): Caller {
  if (!c.var.caller) throw new Error('a route without access control');
  return c.var.caller;
}

/** A credential in the header counts alone: a bad one is refused although a good cookie came along. */
async function findCaller(c: Context<ApiEnv>, deps: Deps): Promise<Caller | null> {
  const header = c.req.header('authorization');
  const token =
    header === undefined
      ? tokenOf(getCookie(c, SESSION_COOKIE), 'session')
      : tokenOf(/^Bearer +(\S+)$/i.exec(header)?.[1], 'api_key');
  if (!token) return null;
  const credential = await inOrganisation(deps.pools.app, wholeFleet(token.organisationId), (tx) =>
    findCredential(tx, token, deps.now()),
  );
  if (!credential) return null;
  const { vesselIds, ...actor } = credential;
  return { organisationId: token.organisationId, vesselIds, actor };
}

function tokenOf(text: string | undefined, kind: 'api_key' | 'session') {
  const token = readToken(text ?? '');
  return token?.kind === kind ? token : null;
}

const isWrite = (c: Context<ApiEnv>) => c.req.method !== 'GET' && c.req.method !== 'HEAD';

function challenge(c: Context<ApiEnv>): string {
  return c.req.header('authorization') === undefined
    ? 'Bearer realm="garboard"'
    : 'Bearer realm="garboard", error="invalid_token"';
}
