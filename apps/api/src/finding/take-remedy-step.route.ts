/** POST /v1/findings/{findingId}/remedy: a step towards putting it right. */
import { takeRemedyStep } from '@garboard/actions/finding/take-remedy-step.ts';
import { RemedyStep } from '@garboard/contract/finding/remedy.ts';
import { toFactInput } from '../item/present-fact.ts';
import { findingAct } from './finding-act.ts';
import { toStep } from './to-entry.ts';

export const takeRemedyStepRoute = findingAct(
  {
    method: 'post',
    path: '/v1/findings/{findingId}/remedy',
    operationId: 'takeRemedyStep',
    summary: 'Take the remedy a step on',
    description: [
      'Proposing, planning, beginning and reporting the work is for every role but `viewer`; `defer` and `accept` are for `owner` and `manager`; `enter_in_error` and `reopen` for these and `surveyor`.',
      'With `report_done` the facts about things aboard are recorded in the same act, or nothing is.',
    ].join(' '),
    body: RemedyStep,
    permission: 'answer_findings',
    answers: 200,
  },
  (ctx, at, step) => takeRemedyStep(ctx, { ...at, step: toStep(step), facts: factsOf(step) }),
);

const factsOf = (step: RemedyStep) =>
  step.step === 'report_done' ? step.facts.map(({ itemId, fact }) => ({ itemId, fact: toFactInput(fact) })) : [];
