/** POST /v1/findings/{findingId}/split: it turns out to be two things. */
import { splitFinding } from '@garboard/actions/finding/split-finding.ts';
import { FindingSplit } from '@garboard/contract/finding/remedy.ts';
import { findingAct } from './finding-act.ts';
import { toFound } from './to-entry.ts';

export const splitFindingRoute = findingAct(
  {
    method: 'post',
    path: '/v1/findings/{findingId}/split',
    operationId: 'splitFinding',
    summary: 'Make a finding of its own out of a part of one',
    description: 'For every role but `viewer`. Answers with the new finding; both say where it came from.',
    body: FindingSplit,
    permission: 'answer_findings',
    answers: 201,
  },
  (ctx, at, { reason, ...found }) => splitFinding(ctx, { ...at, reason, found: toFound(found) }),
);
