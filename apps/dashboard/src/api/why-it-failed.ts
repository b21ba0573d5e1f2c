import { ApiProblem } from '@garboard/client/api-problem.ts';
import { strings } from '../strings/frame.ts';

/** What went wrong, for the reader. A browser's own message ("Failed to fetch") tells nobody anything. */
export function whyItFailed(error: unknown): string {
  return error instanceof ApiProblem ? error.message : strings.unreachable;
}
