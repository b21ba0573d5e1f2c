/** Who is asking, and whether they may. Runs before anything else looks at the request. */
import type { Accounts } from '@garboard/accounts/open-accounts.ts';
import type { Person } from '@garboard/db/organisation/sessions.ts';
import { allows, type Permission } from '@garboard/domain/organisation/permission.ts';
import type { Context, Next } from 'hono';
import { deleteCookie } from 'hono/cookie';
import { createMiddleware } from 'hono/factory';
import type { ApiEnv, Caller, Deps } from '../deps.ts';
import { problem } from '../problem/problem.ts';
import { authenticate } from './authenticate.ts';
import { isSameOrigin } from './same-origin.ts';

/** For who has that permission in the organisation they are at. */
export function access(deps: Deps, permission: Permission) {
  return guard(deps, (c, next) => {
    const { caller } = c.var;
    if (!caller) return problem(c, 'forbidden', { detail: 'You belong to no organisation here, or not any more.' });
    return allows(caller.actor, permission) ? next() : problem(c, 'forbidden');
  });
}

/** For a person who has signed in, whatever they belong to. A program's key stands for nobody. */
export function personAccess(deps: Deps) {
  return guard(deps, (c, next) =>
    c.var.person ? next() : problem(c, 'forbidden', { detail: 'This is for a person who has signed in.' }),
  );
}

/** For every good credential. */
export function anyAccess(deps: Deps) {
  return guard(deps, (_, next) => next());
}

type Guard = (c: Context<ApiEnv>, next: Next) => Promise<void> | Response;

function guard(deps: Deps, allow: Guard) {
  return createMiddleware<ApiEnv>(async (c, next) => {
    c.header('cache-control', 'no-store');
    if (!(await authenticate(c, deps)))
      return problem(c, 'unauthenticated', { headers: { 'www-authenticate': challenge(c) } });
    if (c.var.person && isWrite(c) && !isSameOrigin(c)) return problem(c, 'foreign-origin');
    return allow(c, next);
  });
}

/** The caller of a request that has passed `access`. */
export function callerOf(c: Context<ApiEnv>): Caller {
  if (!c.var.caller) throw new Error('a route without access control');
  return c.var.caller;
}

/** The person of a request that has passed `personAccess`. */
export function personOf(c: Context<ApiEnv>): Person {
  if (!c.var.person) throw new Error('a route without access control');
  return c.var.person;
}

/** There is no person without accounts. */
export function accountsOf({ accounts }: Deps): Accounts {
  if (!accounts) throw new Error('a person without accounts');
  return accounts;
}

export function forgetSession(c: Context<ApiEnv>, deps: Deps): void {
  const { name, secure } = accountsOf(deps).cookie;
  deleteCookie(c, name, { path: '/', secure });
}

const isWrite = (c: Context<ApiEnv>) => c.req.method !== 'GET' && c.req.method !== 'HEAD';

function challenge(c: Context<ApiEnv>): string {
  return c.req.header('authorization') === undefined
    ? 'Bearer realm="garboard"'
    : 'Bearer realm="garboard", error="invalid_token"';
}
