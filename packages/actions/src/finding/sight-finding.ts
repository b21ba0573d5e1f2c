/** Says what somebody saw of a finding. */
import type { FindingView } from '@garboard/db/finding/list-findings.ts';
import type { Step } from '@garboard/domain/finding/entry.ts';
import type { ActionContext } from '../context.ts';
import { refused, type Written } from '../result.ts';
import { write } from '../write.ts';
import { urgentByFaults } from './enter-finding.ts';
import { type At, addEntry, entryOf, lockFinding, type StepRefusal, told } from './take-step.ts';
import { ofVisit } from './visit-of-sighting.ts';

type Seen = Omit<Step & { readonly step: 'seen' }, 'step'>;

export function sightFinding(
  ctx: ActionContext,
  { on, seen, ...at }: At & { readonly on: string; readonly seen: Seen },
): Promise<Written<FindingView, StepRefusal>> {
  return write(ctx, 'answer_findings', async (write) => {
    const locked = await lockFinding(write, at);
    if (!locked.ok) return locked;
    const { record, ground } = locked.value;
    const visit = await ofVisit(write, record.vesselId, seen.visitId);
    const errors = [
      ...visit.errors,
      ...(seen.said ? urgentByFaults(seen.said, on) : []),
      ...(seen.seen === 'not_examined' && seen.words === null
        ? [{ pointer: '/words', detail: 'is needed: why it was not examined' }]
        : []),
    ];
    if (errors.length > 0) return refused({ kind: 'invalid', errors });
    const attended = { ...locked.value, ground: { ...ground, surveyorAttends: visit.surveyorAttends } };
    return told(write, await addEntry(write, attended, entryOf(write, { step: 'seen', ...seen }, on)));
  });
}
