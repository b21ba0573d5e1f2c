/** Changes what is written of a finding. What it said before stays in its entries. */
import type { FindingView } from '@garboard/db/finding/list-findings.ts';
import type { Particulars, UrgencySaid } from '@garboard/domain/finding/entry.ts';
import type { ActionContext } from '../context.ts';
import { refused, type Written } from '../result.ts';
import { write } from '../write.ts';
import { urgentByFaults } from './enter-finding.ts';
import { particularFaults } from './particular-faults.ts';
import { type At, addEntry, entryOf, lockFinding, type StepRefusal, told } from './take-step.ts';

export type Amendment = At & {
  readonly change: Partial<Particulars>;
  readonly said: UrgencySaid | null;
  readonly reason: string | null;
};

export function amendFinding(
  ctx: ActionContext,
  { change, said, reason, ...at }: Amendment,
): Promise<Written<FindingView, StepRefusal>> {
  return write(ctx, 'answer_findings', async (write) => {
    const locked = await lockFinding(write, at);
    if (!locked.ok) return locked;
    const { record, ground } = locked.value;
    const errors = [
      ...(await particularFaults(write.tx, record.vesselId, change)),
      ...(said ? urgentByFaults(said, ground.today) : []),
    ];
    if (errors.length > 0) return refused({ kind: 'invalid', errors });
    return told(
      write,
      await addEntry(write, locked.value, entryOf(write, { step: 'amended', change, said, reason }, ground.today)),
    );
  });
}
