/** One entry that turns out to be two things: the second becomes a finding of its own. Both say where it came from. */
import type { FindingView } from '@garboard/db/finding/list-findings.ts';
import type { Step } from '@garboard/domain/finding/entry.ts';
import type { ActionContext } from '../context.ts';
import { done, refused, type Written } from '../result.ts';
import { write } from '../write.ts';
import { beginFinding, urgentByFaults } from './enter-finding.ts';
import { particularFaults } from './particular-faults.ts';
import { type At, addEntry, entryOf, lockFinding, noteEntry, type StepRefusal, told } from './take-step.ts';

type Found = Omit<Step & { readonly step: 'found' }, 'step'>;

/** Answers with the new finding. */
export function splitFinding(
  ctx: ActionContext,
  { found, reason, ...at }: At & { readonly found: Found; readonly reason: string },
): Promise<Written<FindingView, StepRefusal>> {
  return write(ctx, 'answer_findings', async (write) => {
    const locked = await lockFinding(write, at);
    if (!locked.ok) return locked;
    const { record, ground } = locked.value;
    const errors = [
      ...(await particularFaults(write.tx, record.vesselId, found)),
      ...urgentByFaults(found, ground.today),
    ];
    if (errors.length > 0) return refused({ kind: 'invalid', errors });
    const fresh = await beginFinding(write, record.vesselId, record.finding.lastSeenOn, found);
    const split = await addEntry(
      write,
      locked.value,
      entryOf(write, { step: 'split_off', findingId: fresh.id, reason }, ground.today),
    );
    if (!split.ok) return split;
    return told(
      write,
      done(await noteEntry(write, fresh, entryOf(write, { step: 'split_from', findingId: record.id }, ground.today))),
    );
  });
}
