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
import { versionedAct } from '../openapi/versioned-act.ts';
import { given } from '../request/given.ts';
import { presentLimitation, presentReferral, presentVisit } from './present-visit.ts';
import { toDetailChange } from './to-visit.ts';

const AS_IT_STANDS = { tags: ['Visits'], inWords: 'As it stands now.' };
const VISIT = { ...AS_IT_STANDS, params: VisitPath, answer: Visit, present: presentVisit };
const LIMITATION = { ...AS_IT_STANDS, params: LimitationPath, answer: Limitation, present: presentLimitation };
const REFERRAL = { ...AS_IT_STANDS, params: ReferralPath, answer: Referral, present: presentReferral };

export const changeVisitRoute = versionedAct(
  {
    method: 'patch',
    path: '/v1/visits/{visitId}',
    operationId: 'changeVisit',
    summary: 'Change what is written of an attendance',
    description: 'For `owner`, `manager` and `surveyor`, while the visit is open.',
    permission: 'survey',
    body: VisitChange,
  },
  VISIT,
  (ctx, visitId, expectedVersion, { purpose, ...detail }) =>
    changeVisit(ctx, { visitId, expectedVersion, purpose, detail: toDetailChange(detail) }),
);

export const completeVisitRoute = versionedAct(
  {
    method: 'post',
    path: '/v1/visits/{visitId}/completion',
    operationId: 'completeVisit',
    summary: 'Complete and seal a visit',
    description:
      'For `owner`, `manager` and `surveyor`. Refused with everything that is unanswered and where: places, open findings, limitations. Sealed, nothing of it changes.',
    permission: 'survey',
    body: VisitCompletion,
  },
  VISIT,
  (ctx, visitId, expectedVersion, { completedOn }) => completeVisit(ctx, { visitId, expectedVersion, completedOn }),
);

export const answerLimitationRoute = versionedAct(
  {
    method: 'post',
    path: '/v1/limitations/{limitationId}/answers',
    operationId: 'answerLimitation',
    summary: 'Answer a limitation on a visit',
    description: 'For `owner`, `manager` and `surveyor`. Lifting it needs an open visit on which somebody looked.',
    permission: 'survey',
    body: NewLimitationAnswer,
  },
  LIMITATION,
  (ctx, limitationId, expectedVersion, said) =>
    answerLimitation(ctx, { reason: null, words: null, ...given(said), limitationId, expectedVersion }),
);

export const reportReferralRoute = versionedAct(
  {
    method: 'post',
    path: '/v1/referrals/{referralId}/result',
    operationId: 'reportReferral',
    summary: 'Report what the specialist found',
    description: 'For every role but `viewer`. What is not right is entered as a finding besides.',
    permission: 'answer_findings',
    body: ReferralResult,
  },
  REFERRAL,
  (ctx, referralId, expectedVersion, said) =>
    reportReferral(ctx, { referralId, expectedVersion, result: { qualification: null, ...given(said) } }),
);
