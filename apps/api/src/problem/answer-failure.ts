/** The one place where an action's failures become problems. */
import type { Failure, FailureKind } from '@garboard/actions/result.ts';
import type { Problem, ProblemType } from '@garboard/contract/problem.ts';
import type { Context } from 'hono';
import type { ApiEnv } from '../deps.ts';
import { etagOf } from '../request/etag.ts';
import { type Answered, type More, problem } from './problem.ts';
import { problemBody } from './problem-body.ts';

const PROBLEM_OF = {
  forbidden: 'forbidden',
  not_found: 'not-found',
  stale: 'stale',
  invalid: 'invalid',
  conflict: 'conflict',
  key_reused: 'idempotency-key-reused',
} as const satisfies Record<FailureKind, ProblemType>;
type ProblemOf<F extends Failure> = (typeof PROBLEM_OF)[F['kind']];

/** Typed by the failures that can happen: a route that does not declare the status of one does not compile. */
export function answerFailure<F extends Failure>(c: Context<ApiEnv>, failure: F): Answered<ProblemOf<F>> {
  return problem(c, PROBLEM_OF[failure.kind], moreOf(failure)) as Answered<ProblemOf<F>>;
}

/** One row's failure, as a part of an answer about many. */
export function problemOf(failure: Failure): Problem {
  const { detail, errors } = moreOf(failure);
  const more = { ...(detail !== undefined && { detail }), ...(errors && { errors: [...errors] }) };
  return problemBody(PROBLEM_OF[failure.kind], undefined, more);
}

function moreOf(failure: Failure): More {
  switch (failure.kind) {
    case 'stale':
      return { headers: { etag: etagOf(failure.version) } };
    case 'invalid':
      return { errors: failure.errors };
    case 'conflict':
      return { detail: failure.detail };
    case 'forbidden':
    case 'not_found':
    case 'key_reused':
      return {};
  }
}
