/** What an action needs to know of the request, and how a route reads and writes in the caller's scope. */
import type { ActionContext, PersonContext } from '@garboard/actions/context.ts';
import { inOrganisation, type Scoped } from '@garboard/db/scope.ts';
import type { Context } from 'hono';
import type { ApiEnv, Deps } from '../deps.ts';
import { callerOf, personOf } from '../organisation/access.ts';
import { onceOf } from './idempotency-key.ts';

export function actionContext(c: Context<ApiEnv>, deps: Deps, body: unknown): ActionContext {
  return { ...callerOf(c), ...onceOf(c, body), db: deps.pools.app, requestId: c.var.requestId, now: deps.now() };
}

/** For what a person does for themselves, at whatever organisation. */
export function personContext(c: Context<ApiEnv>, deps: Deps, body: unknown): PersonContext {
  const { id, sessionId, email } = personOf(c);
  const person = { id, sessionId, email };
  return { person, ...onceOf(c, body), db: deps.pools.app, requestId: c.var.requestId, now: deps.now() };
}

export function read<T>(c: Context<ApiEnv>, deps: Deps, work: (tx: Scoped) => Promise<T>): Promise<T> {
  return inOrganisation(deps.pools.app, callerOf(c), work);
}
