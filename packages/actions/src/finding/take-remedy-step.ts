/** Takes the remedy a step on. What the work did to things aboard is recorded as facts in the same act. */
import type { FindingView } from '@garboard/db/finding/list-findings.ts';
import { loadItem } from '@garboard/db/item/items.ts';
import type { Step } from '@garboard/domain/finding/entry.ts';
import type { Permission } from '@garboard/domain/organisation/permission.ts';
import type { ActionContext } from '../context.ts';
import { type FactInput, recordFactIn } from '../item/record-fact.ts';
import { done, type Result, refused, type Written } from '../result.ts';
import { type Write, write } from '../write.ts';
import { type At, addEntry, entryOf, type Locked, lockFinding, type StepRefusal, told } from './take-step.ts';

export type RemedyStep = Extract<
  Step,
  {
    readonly step:
      | 'proposed'
      | 'planned'
      | 'begun'
      | 'reported_done'
      | 'deferred'
      | 'accepted'
      | 'entered_in_error'
      | 'reopened';
  }
>;
export type FactOfWork = { readonly itemId: string; readonly fact: FactInput };

export function takeRemedyStep(
  ctx: ActionContext,
  { step, facts, ...at }: At & { readonly step: RemedyStep; readonly facts: readonly FactOfWork[] },
): Promise<Written<FindingView, StepRefusal>> {
  return write(ctx, permissionFor(step), async (write) => {
    const locked = await lockFinding(write, at);
    if (!locked.ok) return locked;
    const recorded = await recordFacts(write, locked.value, facts.map(byWhoeverDidTheWork(step)));
    if (!recorded.ok) return recorded;
    const whole: RemedyStep = step.step === 'reported_done' ? { ...step, facts: recorded.value } : step;
    return told(write, await addEntry(write, locked.value, entryOf(write, whole, locked.value.ground.today)));
  });
}

function permissionFor({ step }: RemedyStep): Permission {
  switch (step) {
    case 'proposed':
    case 'planned':
    case 'begun':
    case 'reported_done':
      return 'answer_findings';
    case 'deferred':
    case 'accepted':
      return 'put_off_findings';
    case 'entered_in_error':
    case 'reopened':
      return 'verify_findings';
  }
}

/** A fact that names nobody was made by whoever did the work: their competence is what resets a clock. */
const byWhoeverDidTheWork =
  (step: RemedyStep) =>
  ({ itemId, fact }: FactOfWork): FactOfWork => {
    const { name, capacity, certificate } = (step.step === 'reported_done' && step.doneBy) || NOBODY;
    const doneBy =
      fact.doneBy ?? (name === null ? null : { name, capacity, ...(certificate !== null && { certificate }) });
    return { itemId, fact: { ...fact, doneBy } };
  };
const NOBODY = { name: null, capacity: null, certificate: null } as const;

/** The ids of the facts; all of them, or none and the first that was refused. */
async function recordFacts(
  write: Write,
  { record }: Locked,
  facts: readonly FactOfWork[],
): Promise<Result<string[], StepRefusal>> {
  const ids: string[] = [];
  for (const [index, { itemId, fact }] of facts.entries()) {
    const item = await loadItem(write.tx, itemId);
    if (item?.vesselId !== record.vesselId)
      return refused({
        kind: 'invalid',
        errors: [{ pointer: `/facts/${index}/itemId`, detail: 'is nothing aboard of her' }],
      });
    const recorded = await recordFactIn(write, { itemId, fact });
    if (!recorded.ok) return inFact(recorded.failure, index);
    ids.push(recorded.value.fact.id);
  }
  return done(ids);
}

type FactFailure = Extract<Awaited<ReturnType<typeof recordFactIn>>, { ok: false }>['failure'];

function inFact(failure: FactFailure, index: number): Result<never, StepRefusal> {
  if (failure.kind !== 'invalid') return refused(failure);
  const at = (pointer: string) => `/facts/${index}/fact${pointer}`;
  return refused({ kind: 'invalid', errors: failure.errors.map((each) => ({ ...each, pointer: at(each.pointer) })) });
}
