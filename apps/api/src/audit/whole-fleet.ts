/** Lets only those on who see the whole fleet: what follows names vessels that others may not know of. */
import { createMiddleware } from 'hono/factory';
import type { ApiEnv } from '../deps.ts';
import { callerOf } from '../organisation/access.ts';
import { problem } from '../problem/problem.ts';

export const ofWholeFleet = createMiddleware<ApiEnv>(async (c, next) => {
  if (callerOf(c).vesselIds === 'all') return next();
  return problem(c, 'forbidden', { detail: 'The audit speaks of the whole fleet, and you see some of her vessels.' });
});
