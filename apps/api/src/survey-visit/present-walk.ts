/** The route of a visit, stop by stop, with what each has open and what the visit has said. */
import type { VisitWalk } from '@garboard/actions/survey-visit/walk-of-visit.ts';
import type { Walk } from '@garboard/contract/survey-visit/walk.ts';
import type { FindingRecord } from '@garboard/db/finding/finding-record.ts';
import type { LimitationRecord, RouteZone, VisitRecord } from '@garboard/db/survey-visit/visit-record.ts';
import { readsAs } from '@garboard/domain/finding/words.ts';
import { PUBLISHED_LIMITS } from '@garboard/domain/reading/published-limits.ts';
import { presentEvidence } from '../evidence/present-evidence.ts';
import { presentAnswer, presentReading } from './present-visit.ts';

type Stop = Walk['stops'][number];

type Point = { readonly zone: string; readonly point: string };

/** `points`: where something was measured or photographed on her before. */
export function presentWalk(visit: VisitRecord, walk: VisitWalk, points: readonly Point[]): Walk {
  const known = [...PUBLISHED_LIMITS, ...points];
  const onRoute = new Set(visit.route.map(({ zone }) => zone));
  const others = [
    ...walk.findings.map(({ finding }) => finding.zone),
    ...walk.limitations.map(({ zone }) => zone),
    ...walk.evidence.flatMap(({ zone }) => zone ?? []),
  ];
  const off = [...new Set(others)].filter((zone) => !onRoute.has(zone));
  const route = [...visit.route, ...off.map((zone) => ({ zone, name: zone.replaceAll('_', ' ') }))];
  return {
    stops: route.map((stop) => stopOf(stop, visit, walk, known)),
    unanswered: walk.unanswered.map((each) => ({ ...each })),
  };
}

/** What lies at no place of the route comes after it. */
function stopOf({ zone, name }: RouteZone, visit: VisitRecord, walk: VisitWalk, points: readonly Point[]): Stop {
  const answer = walk.answers.findLast((each) => each.zone === zone);
  return {
    ...{ zone, name },
    ...(answer && { answer: presentAnswer(answer) }),
    findings: walk.findings.filter(({ finding }) => finding.zone === zone).map((record) => ofFinding(record, walk)),
    limitations: walk.limitations.filter((each) => each.zone === zone).map((each) => ofLimitation(each, visit, walk)),
    referrals: walk.referrals
      .filter((each) => each.zone === zone)
      .map(({ id, what, trade, dueOn }) => ({ id, what, trade: trade as Stop['referrals'][number]['trade'], dueOn })),
    readings: walk.readings.filter((each) => each.zone === zone).map((each) => presentReading(each, visit)),
    points: [...new Set(points.filter((each) => each.zone === zone).map(({ point }) => point))],
    evidence: walk.evidence.filter((each) => each.zone === zone).map(presentEvidence),
  };
}

function ofFinding({ id, number, version, finding }: FindingRecord, { entries }: VisitWalk): Stop['findings'][number] {
  const entry = entries.findLast(({ findingId }) => findingId === id)?.entry;
  const seen = entry?.step === 'seen' ? entry.seen : entry?.step === 'found' ? ('new' as const) : undefined;
  const { what, urgency } = finding;
  return { id, number, version, what, urgency, reads: readsAs(finding), ...(seen && { seen }) };
}

function ofLimitation(record: LimitationRecord, visit: VisitRecord, walk: VisitWalk): Stop['limitations'][number] {
  const { id, what, reason, imposedOn, version } = record;
  const said = walk.limitationAnswers.findLast(({ limitationId }) => limitationId === id)?.answer;
  const answered = said ?? (record.visitId === visit.id ? ('new' as const) : undefined);
  return {
    id,
    what,
    reason: reason as Stop['limitations'][number]['reason'],
    imposedOn,
    version,
    ...(answered && { answered }),
  };
}
