/** Two entries of one thing: one is merged into the other, which says so. Both keep their history. */
import type { FindingRecord } from '@garboard/db/finding/finding-record.ts';
import { loadFinding } from '@garboard/db/finding/findings.ts';
import type { FindingView } from '@garboard/db/finding/list-findings.ts';
import { isOpen } from '@garboard/domain/finding/next-state.ts';
import type { ActionContext } from '../context.ts';
import { type Fault, refused, type Written } from '../result.ts';
import { write } from '../write.ts';
import { type At, addEntry, entryOf, lockFinding, noteEntry, type StepRefusal, told } from './take-step.ts';

export function mergeFinding(
  ctx: ActionContext,
  { into, reason, ...at }: At & { readonly into: string; readonly reason: string },
): Promise<Written<FindingView, StepRefusal>> {
  return write(ctx, 'answer_findings', async (write) => {
    const locked = await lockFinding(write, at);
    if (!locked.ok) return locked;
    const { record, ground } = locked.value;
    const target = await loadFinding(write.tx, into);
    const errors = targetFaults(record, target);
    if (errors.length > 0 || !target) return refused({ kind: 'invalid', errors });
    const merged = await addEntry(
      write,
      locked.value,
      entryOf(write, { step: 'merged_into', findingId: into, reason }, ground.today),
    );
    if (!merged.ok) return merged;
    await noteEntry(write, target, entryOf(write, { step: 'took_in', findingId: record.id }, ground.today));
    return told(write, merged);
  });
}

function targetFaults(record: FindingRecord, target: FindingRecord | null): Fault[] {
  const fault = (detail: string) => [{ pointer: '/into', detail }];
  if (target?.vesselId !== record.vesselId) return fault('is no finding of this vessel');
  if (target.id === record.id) return fault('is the finding itself');
  return isOpen(target.finding.remedy.state) ? [] : fault('has ended: reopen it first');
}
