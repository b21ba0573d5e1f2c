/** What a fact changed: each obligation before and after it. */
import type { Obligation } from './item.query.ts';

export type Change =
  | { readonly kind: 'moved' | 'unchanged'; readonly before: Obligation; readonly after: Obligation }
  | { readonly kind: 'fresh'; readonly after: Obligation }
  | { readonly kind: 'gone'; readonly before: Obligation };

/** What moved first, then the rest in the order the API gives. */
export function changes(before: readonly Obligation[], after: readonly Obligation[]): Change[] {
  const now = after.map((each): Change => {
    const was = before.find((old) => isSame(old, each));
    if (!was) return { kind: 'fresh', after: each };
    return { kind: hasMoved(was, each) ? 'moved' : 'unchanged', before: was, after: each };
  });
  const gone = before
    .filter((old) => !after.some((each) => isSame(old, each)))
    .map((each): Change => ({ kind: 'gone', before: each }));
  return [
    ...now.filter(({ kind }) => kind !== 'unchanged'),
    ...gone,
    ...now.filter(({ kind }) => kind === 'unchanged'),
  ];
}

const isSame = (a: Obligation, b: Obligation) => a.ruleId === b.ruleId && a.duty === b.duty;

function hasMoved(a: Obligation, b: Obligation): boolean {
  return a.dueOn !== b.dueOn || a.overdueAfter !== b.overdueAfter || a.standing !== b.standing;
}
