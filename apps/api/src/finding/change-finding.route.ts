/** PATCH /v1/findings/{findingId}: changes what is written of it. */
import { amendFinding } from '@garboard/actions/finding/amend-finding.ts';
import { FindingChange } from '@garboard/contract/finding/finding.ts';
import { findingAct } from './finding-act.ts';
import { toAmendment } from './to-entry.ts';

export const changeFindingRoute = findingAct(
  {
    method: 'patch',
    path: '/v1/findings/{findingId}',
    operationId: 'changeFinding',
    summary: 'Change what is written of a finding',
    description:
      'For every role but `viewer`. What it said before stays among its entries. `before_use` is not let down here: that takes a surveyor’s new sighting.',
    body: FindingChange,
    permission: 'answer_findings',
    answers: 200,
  },
  (ctx, at, change) => amendFinding(ctx, { ...at, ...toAmendment(change) }),
);
