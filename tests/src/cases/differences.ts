/** What an answer says otherwise than a case expects: nothing, when the case passes. */
import { isDeepStrictEqual } from 'node:util';
import { type Expected, SHOWN } from './read-cases.ts';

/** An obligation as `POST /v1/due-dates/explain` shows it; only what a case can expect. */
export type Answered = {
  readonly ruleId: string;
  readonly duty: string;
  readonly dueOn?: string;
  readonly overdueAfter?: string;
  readonly expiresOn?: string;
  readonly replaceBy?: string;
  readonly latestPermittedOn?: string;
  readonly windows: readonly { readonly opens: string; readonly closes: string }[];
  readonly suspendedFrom?: string;
  readonly suspendedUntil?: string;
  readonly standing: string;
  readonly explanation: { readonly sentence: string; readonly doubts: readonly string[] };
};

export function differencesFrom(expected: Expected, answer: readonly Answered[]): readonly string[] {
  const name = [expected.ruleId, expected.duty].filter(Boolean).join(' ');
  const found = answer.filter(({ ruleId, duty }) => ruleId === expected.ruleId && duty === (expected.duty ?? duty));
  if (expected.absent) return found.length === 0 ? [] : [`${name} is there`];
  const [obligation, ...others] = found;
  if (!obligation) return [`${name} is not there`];
  if (others.length > 0) return [`${name} is there more than once: name its duty`];
  return [...datesThatDiffer(expected, obligation), ...doubtThatDiffers(expected, obligation)].map(
    (text) => `${name}: ${text}`,
  );
}

function datesThatDiffer(expected: Expected, obligation: Answered): string[] {
  return SHOWN.filter((key) => key in expected)
    .filter((key) => !isDeepStrictEqual(obligation[key] ?? null, expected[key]))
    .map((key) => `${key} is ${JSON.stringify(obligation[key] ?? null)}, not ${JSON.stringify(expected[key])}`);
}

function doubtThatDiffers({ doubt }: Expected, { explanation }: Answered): string[] {
  if (doubt === undefined || explanation.doubts.some((said) => said.includes(doubt))) return [];
  return [`no doubt says "${doubt}"`];
}
