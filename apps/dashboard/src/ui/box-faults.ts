/** Which box of a form a problem of the API's is about. */
import { ApiProblem } from '@garboard/client/api-problem.ts';
import { whyItFailed } from '../api/why-it-failed.ts';
import { form } from '../strings/form.ts';

export type BoxFaults = { readonly at: Readonly<Record<string, string>>; readonly others: readonly string[] };
export const NO_BOX_FAULTS: BoxFaults = { at: {}, others: [] };

export function boxFaults(error: unknown): BoxFaults {
  const errors = error instanceof ApiProblem ? error.problem.errors : undefined;
  if (!errors?.length) return { at: {}, others: [whyItFailed(error)] };
  return { at: Object.fromEntries(errors.map(({ pointer, detail }) => [pointer.slice(1), detail])), others: [] };
}

/** What can be said before the API is asked: texts that are needed, and vessels of which none is named. */
export function missingFrom(
  texts: Readonly<Record<string, string>>,
  vesselIds: readonly string[] | null = null,
): BoxFaults | null {
  const empty = Object.keys(texts).filter((key) => texts[key]?.trim() === '');
  const at = {
    ...Object.fromEntries(empty.map((key) => [key, form.needed])),
    ...(vesselIds?.length === 0 && { vesselIds: form.noVessel }),
  };
  return Object.keys(at).length > 0 ? { at, others: [] } : null;
}
