/** POST /v1/findings/{findingId}/sightings: what somebody saw of it. */
import { sightFinding } from '@garboard/actions/finding/sight-finding.ts';
import { NewSighting } from '@garboard/contract/finding/finding.ts';
import { findingAct } from './finding-act.ts';
import { toSeen } from './to-entry.ts';

export const sightFindingRoute = findingAct(
  {
    method: 'post',
    path: '/v1/findings/{findingId}/sightings',
    operationId: 'sightFinding',
    summary: 'Say what was seen of a finding',
    description:
      'For every role but `viewer`. `gone` ends it, asks for evidence, and is said by an owner, manager or surveyor who did not do the work. Seen again after its end, it is open again.',
    body: NewSighting,
    permission: 'answer_findings',
    answers: 200,
  },
  (ctx, at, { on, ...sighting }) => sightFinding(ctx, { ...at, on, seen: toSeen(sighting) }),
);
