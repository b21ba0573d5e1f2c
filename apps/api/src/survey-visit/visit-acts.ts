/** PATCH /v1/visits/{visitId}, POST …/completion, and the answers to limitations and referrals. */
import { changeVisit } from '@garboard/actions/survey-visit/change-visit.ts';
import { completeVisit } from '@garboard/actions/survey-visit/complete-visit.ts';
import { answerLimitation } from '@garboard/actions/survey-visit/limitation.ts';
import { reportReferral } from '@garboard/actions/survey-visit/referral.ts';
import { Visit, VisitChange } from '@garboard/contract/survey-visit/visit.ts';
import {
  Limitation,
  NewLimitationAnswer,
  Referral,
  ReferralResult,
  VisitCompletion,
} from '@garboard/contract/survey-visit/walk.ts';
import { LimitationPath, ReferralPath, VisitPath } from '../openapi/declare.ts';
import { given } from '../request/given.ts';
import { presentLimitation, presentReferral, presentVisit } from './present-visit.ts';
import { toDetailChange } from './to-visit.ts';
import { visitAct } from './visit-act.ts';

export const changeVisitRoute = visitAct(
  {
    method: 'patch',
    path: '/v1/visits/{visitId}',
    operationId: 'changeVisit',
    summary: 'Change what is written of an attendance',
    description: 'For `owner`, `manager` and `surveyor`, while the visit is open.',
    params: VisitPath,
    permission: 'survey',
    body: VisitChange,
    answer: Visit,
  },
  (ctx, visitId, expectedVersion, { purpose, ...detail }) =>
    changeVisit(ctx, { visitId, expectedVersion, purpose, detail: toDetailChange(detail) }),
  presentVisit,
);

export const completeVisitRoute = visitAct(
  {
    method: 'post',
    path: '/v1/visits/{visitId}/completion',
    operationId: 'completeVisit',
    summary: 'Complete and seal a visit',
    description:
      'For `owner`, `manager` and `surveyor`. Refused with everything that is unanswered and where: places, open findings, limitations. Sealed, nothing of it changes.',
    params: VisitPath,
    permission: 'survey',
    body: VisitCompletion,
    answer: Visit,
  },
  (ctx, visitId, expectedVersion, { completedOn }) => completeVisit(ctx, { visitId, expectedVersion, completedOn }),
  presentVisit,
);

export const answerLimitationRoute = visitAct(
  {
    method: 'post',
    path: '/v1/limitations/{limitationId}/answers',
    operationId: 'answerLimitation',
    summary: 'Answer a limitation on a visit',
    description: 'For `owner`, `manager` and `surveyor`. Lifting it needs an open visit on which somebody looked.',
    params: LimitationPath,
    permission: 'survey',
    body: NewLimitationAnswer,
    answer: Limitation,
  },
  (ctx, limitationId, expectedVersion, said) =>
    answerLimitation(ctx, { reason: null, words: null, ...given(said), limitationId, expectedVersion }),
  presentLimitation,
);

export const reportReferralRoute = visitAct(
  {
    method: 'post',
    path: '/v1/referrals/{referralId}/result',
    operationId: 'reportReferral',
    summary: 'Report what the specialist found',
    description: 'For every role but `viewer`. What is not right is entered as a finding besides.',
    params: ReferralPath,
    permission: 'answer_findings',
    body: ReferralResult,
    answer: Referral,
  },
  (ctx, referralId, expectedVersion, said) =>
    reportReferral(ctx, { referralId, expectedVersion, result: { qualification: null, ...given(said) } }),
  presentReferral,
);
