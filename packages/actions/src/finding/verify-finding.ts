/** Somebody other than whoever did the work has looked: it is right, or it goes back. */
import type { FindingView } from '@garboard/db/finding/list-findings.ts';
import type { Evidence, Step } from '@garboard/domain/finding/entry.ts';
import { isSamePair } from '@garboard/domain/finding/judge-step.ts';
import { actorText } from '../audit.ts';
import type { ActionContext } from '../context.ts';
import { refused, type Written } from '../result.ts';
import { write } from '../write.ts';
import { type At, addEntry, entryOf, lockFinding, type StepRefusal, told } from './take-step.ts';

export type Verdict =
  | { readonly right: true; readonly words: string | null; readonly evidence: readonly Evidence[] }
  | { readonly right: false; readonly words: string | null };

export function verifyFinding(
  ctx: ActionContext,
  { verdict, ...at }: At & { readonly verdict: Verdict },
): Promise<Written<FindingView, StepRefusal>> {
  return write(ctx, 'verify_findings', async (write) => {
    const locked = await lockFinding(write, at);
    if (!locked.ok) return locked;
    const { record, ground } = locked.value;
    const step = stepOf(verdict, !isSamePair(record.finding, actorText(ctx.actor)));
    if (!step) return refused({ kind: 'invalid', errors: [WORDS_NEEDED] });
    return told(write, await addEntry(write, locked.value, entryOf(write, step, ground.today)));
  });
}

const WORDS_NEEDED = { pointer: '/words', detail: 'is needed: what is not right' };

function stepOf(verdict: Verdict, independent: boolean): Step | null {
  if (verdict.right) return { step: 'verified', words: verdict.words, evidence: verdict.evidence, independent };
  return verdict.words === null ? null : { step: 'sent_back', reason: verdict.words };
}
