/** How a route answers with a problem. */
import type { Fault, Problem, ProblemType } from '@garboard/contract/problem.ts';
import type { Context, TypedResponse } from 'hono';
import type { ApiEnv } from '../deps.ts';
import { problemBody } from './problem-body.ts';
import { PROBLEMS, type StatusOf } from './problem-table.ts';

export type More = {
  readonly detail?: string;
  readonly errors?: readonly Fault[];
  readonly headers?: Record<string, string>;
};
export type Answered<T extends ProblemType> = T extends ProblemType
  ? Response & TypedResponse<Problem, StatusOf<T>, 'json'>
  : never;

export function problem<T extends ProblemType>(
  c: Context<ApiEnv>,
  type: T,
  { detail, errors, headers }: More = {},
): Answered<T> {
  const more = { ...(detail !== undefined && { detail }), ...(errors && { errors: [...errors] }) };
  return c.json(problemBody(type, c.var.requestId, more), PROBLEMS[type].status, {
    ...headers,
    'content-type': 'application/problem+json',
  }) as Answered<T>;
}
