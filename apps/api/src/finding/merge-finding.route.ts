/** POST /v1/findings/{findingId}/merge: it is the same as another. */
import { mergeFinding } from '@garboard/actions/finding/merge-finding.ts';
import { FindingMerge } from '@garboard/contract/finding/remedy.ts';
import { findingAct } from './finding-act.ts';

export const mergeFindingRoute = findingAct(
  {
    method: 'post',
    path: '/v1/findings/{findingId}/merge',
    operationId: 'mergeFinding',
    summary: 'Merge a finding into another of the same vessel',
    description: 'For every role but `viewer`. Both keep their history; the other stays open. It can be reopened.',
    body: FindingMerge,
    permission: 'answer_findings',
    answers: 200,
  },
  (ctx, at, said) => mergeFinding(ctx, { ...at, ...said }),
);
