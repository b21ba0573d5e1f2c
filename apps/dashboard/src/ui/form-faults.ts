/** What the API finds wrong with a form, box by box; or the whole of it. */
import { ApiProblem } from '@garboard/client/api-problem.ts';
import { whyItFailed } from '../api/why-it-failed.ts';
import type { FormFault } from './quick-form.tsx';

/** `null`: done, nothing was thrown. */
export async function faultsOrDone(act: () => Promise<unknown>): Promise<readonly FormFault[] | null> {
  try {
    await act();
    return null;
  } catch (error) {
    return formFaults(error);
  }
}

export function formFaults(error: unknown): readonly FormFault[] {
  const errors = error instanceof ApiProblem ? (error.problem.errors ?? []) : [];
  if (errors.length === 0) return [{ words: whyItFailed(error) }];
  return errors.map(({ pointer, detail }) => ({ at: pointer.slice(1), words: detail }));
}
