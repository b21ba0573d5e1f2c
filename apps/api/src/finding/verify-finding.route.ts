/** POST /v1/findings/{findingId}/verification: somebody other than whoever did the work has looked. */
import { type Verdict, verifyFinding } from '@garboard/actions/finding/verify-finding.ts';
import { Verification } from '@garboard/contract/finding/remedy.ts';
import { findingAct } from './finding-act.ts';
import { toEvidence } from './to-entry.ts';

export const verifyFindingRoute = findingAct(
  {
    method: 'post',
    path: '/v1/findings/{findingId}/verification',
    operationId: 'verifyFinding',
    summary: 'Verify the work, or send it back',
    description:
      'For `owner`, `manager` and `surveyor`, and not for whoever did the work, unless the organisation has switched the second pair of eyes off.',
    body: Verification,
    permission: 'verify_findings',
    answers: 200,
  },
  (ctx, at, said) => verifyFinding(ctx, { ...at, verdict: toVerdict(said) }),
);

function toVerdict(said: Verification): Verdict {
  const { right, words = null, evidence } = said;
  return right ? { right, words, evidence: toEvidence(evidence) } : { right, words };
}
