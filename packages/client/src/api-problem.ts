import type { components } from './generated/api.d.ts';

export type Problem = components['schemas']['Problem'];

/** An answer the API gave on purpose. Anything else that goes wrong is some other Error. */
export class ApiProblem extends Error {
  readonly problem: Problem;

  constructor(problem: Problem) {
    super(problem.detail ?? problem.title);
    this.name = 'ApiProblem';
    this.problem = problem;
  }
}

export function isStatus(error: unknown, status: number): boolean {
  return error instanceof ApiProblem && error.problem.status === status;
}
