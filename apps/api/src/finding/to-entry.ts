/** What the contract takes, as the entries keep it: what is absent is `null`, money is in minor units. */
import type { RemedyStep as Taken } from '@garboard/actions/finding/take-remedy-step.ts';
import type { FindingChange, NewFinding, NewSighting } from '@garboard/contract/finding/finding.ts';
import type { RemedyStep } from '@garboard/contract/finding/remedy.ts';
import type { Estimate, Evidence, Particulars, Step, UrgencySaid } from '@garboard/domain/finding/entry.ts';
import { given } from '../request/given.ts';
import { toMinor } from '../vessel/money.ts';

type Shown = NewFinding['evidence'];
type Priced = NonNullable<NewFinding['estimate']>;

export const toEvidence = (evidence: Shown): Evidence[] =>
  evidence.map(({ kind, words, evidenceId }) => ({ kind, words, evidenceId: evidenceId ?? null }));

const toEstimate = ({ author, ...money }: Priced): Estimate => ({ ...toMinor(money), author });

export function toFound(finding: Omit<NewFinding, 'on'>): Omit<Step & { step: 'found' }, 'step'> {
  const { zone, what, hazard, urgency, estimate, evidence } = finding;
  const { itemId = null, trade = null, responsible = null, ruleId = null, limit = null } = finding;
  const { urgentBy = null, words = null, visitId = null } = finding;
  return {
    ...{ zone, what, hazard, urgency, urgentBy, itemId, trade, responsible, ruleId, limit, words },
    estimate: estimate ? toEstimate(estimate) : null,
    visitId,
    evidence: toEvidence(evidence),
  };
}

export function toSeen(sighting: Omit<NewSighting, 'on'>): Omit<Step & { step: 'seen' }, 'step'> {
  const { seen, words = null, visitId = null, evidence, ...said } = sighting;
  return { seen, words, visitId, said: toSaid(said), evidence: toEvidence(evidence) };
}

type MaybeSaid = Pick<NewSighting, 'urgency' | 'urgentBy'>;

function toSaid(said: MaybeSaid): UrgencySaid | null {
  const { urgency, urgentBy = null } = said;
  return urgency ? { urgency, urgentBy } : null;
}

export function toAmendment(amendment: FindingChange) {
  const { urgency, urgentBy, reason = null, estimate, ...change } = amendment;
  return {
    change: given({ ...change, estimate: estimate && toEstimate(estimate) }) as Partial<Particulars>,
    said: toSaid({ urgency, urgentBy }),
    reason,
  };
}

/** Facts come apart: they are recorded by their own rule. */
export function toStep(step: RemedyStep): Taken {
  switch (step.step) {
    case 'propose': {
      const { work, trade = null, estimate } = step;
      return { step: 'proposed', work, trade, estimate: estimate ? toEstimate(estimate) : null };
    }
    case 'plan': {
      const { work = null, forDay = null, trade = null, responsible = null } = step;
      return { step: 'planned', work, forDay, trade, responsible };
    }
    case 'begin':
      return { step: 'begun', words: step.words ?? null };
    case 'report_done': {
      const { work, doneOn, doneBy, evidence } = step;
      const by = doneBy ? { ...doneBy, certificate: doneBy.certificate ?? null } : null;
      return { step: 'reported_done', work, doneOn, doneBy: by, evidence: toEvidence(evidence), facts: [] };
    }
    case 'defer': {
      const { until, reviewOn, responsible, reason } = step;
      return { step: 'deferred', until, reviewOn, responsible, reason };
    }
    case 'accept': {
      const { reviewOn, responsible, reason } = step;
      return { step: 'accepted', reviewOn, responsible, reason };
    }
    case 'enter_in_error':
      return { step: 'entered_in_error', reason: step.reason };
    case 'reopen':
      return { step: 'reopened', reason: step.reason };
  }
}
