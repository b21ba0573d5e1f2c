/** The one place where an action's failures become problems. */
import type { Failure } from '@garboard/actions/result.ts';
import type { Context } from 'hono';
import type { ApiEnv } from '../deps.ts';
import { etagOf } from '../request/etag.ts';
import { problem } from './problem.ts';

export function answerFailure(c: Context<ApiEnv>, failure: Failure) {
  switch (failure.kind) {
    case 'forbidden':
      return problem(c, 'forbidden');
    case 'not_found':
      return problem(c, 'not-found');
    case 'stale':
      return problem(c, 'stale', { headers: { etag: etagOf(failure.version) } });
    case 'invalid':
      return problem(c, 'invalid', { errors: failure.errors });
    case 'conflict':
      return problem(c, 'conflict', { detail: failure.detail });
    case 'key_reused':
      return problem(c, 'idempotency-key-reused');
  }
}
