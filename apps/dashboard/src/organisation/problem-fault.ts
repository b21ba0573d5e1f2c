import { ApiProblem } from '@garboard/client/api-problem.ts';
import { whyItFailed } from '../api/why-it-failed.ts';
import type { FormFault } from '../ui/quick-form.tsx';

/** The fault of a form of the API's: the first box that the problem points at, or the whole. */
function problemFault(error: unknown): FormFault {
  const [first] = error instanceof ApiProblem ? (error.problem.errors ?? []) : [];
  return first ? { at: first.pointer.slice(1), words: first.detail } : { words: whyItFailed(error) };
}

/** For a form that is done where nothing is thrown. */
export async function faultOrDone(act: () => Promise<unknown>): Promise<FormFault | null> {
  try {
    await act();
    return null;
  } catch (error) {
    return problemFault(error);
  }
}
