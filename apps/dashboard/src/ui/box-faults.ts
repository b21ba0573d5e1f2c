/** Which box of a grant a problem is about. */
import { ApiProblem } from '@garboard/client/api-problem.ts';
import { whyItFailed } from '../api/why-it-failed.ts';
import { doors, people as words } from '../strings/people.ts';
import type { Granted } from './people.query.ts';

export type GrantFaults = { readonly at: Readonly<Record<string, string>>; readonly others: readonly string[] };
export const NO_GRANT_FAULTS: GrantFaults = { at: {}, others: [] };

export function grantFaults(error: unknown): GrantFaults {
  const errors = error instanceof ApiProblem ? error.problem.errors : undefined;
  if (!errors?.length) return { at: {}, others: [whyItFailed(error)] };
  return { at: Object.fromEntries(errors.map(({ pointer, detail }) => [pointer.slice(1), detail])), others: [] };
}

/** What can be said before the API is asked. */
export function missingFrom(granted: Granted, texts: Readonly<Record<string, string>>): GrantFaults | null {
  const empty = Object.keys(texts).filter((key) => texts[key]?.trim() === '');
  const at = {
    ...Object.fromEntries(empty.map((key) => [key, doors.needed])),
    ...(granted.vesselIds?.length === 0 && { vesselIds: words.noVessel }),
  };
  return Object.keys(at).length > 0 ? { at, others: [] } : null;
}
