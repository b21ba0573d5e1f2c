/** The body of a problem, for whoever answers without a request that could be read, or about one row of many. */
import type { Problem, ProblemType } from '@garboard/contract/problem.ts';
import { PROBLEMS } from './problem-table.ts';

export function problemBody(
  type: ProblemType,
  instance: string | undefined,
  more: Pick<Problem, 'detail' | 'errors'> = {},
): Problem {
  const { status, title } = PROBLEMS[type];
  const { detail, errors } = more;
  return {
    type: `/problems/${type}`,
    title,
    status,
    ...(detail !== undefined && { detail }),
    ...(instance !== undefined && { instance }),
    ...(errors && { errors }),
  };
}
