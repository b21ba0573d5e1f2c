/** Everything that bears on a visit, place by place, and what it has not answered yet. */
import { type EvidenceRecord, loadEvidenceOfVisit } from '@garboard/db/evidence/evidence.ts';
import type { FindingRecord } from '@garboard/db/finding/finding-record.ts';
import { loadFindingsByIds, loadOpenFindings } from '@garboard/db/finding/findings.ts';
import type { Scoped } from '@garboard/db/scope.ts';
import { loadLimitationAnswers, loadLimitationsOfVisit, loadUnlifted } from '@garboard/db/survey-visit/limitations.ts';
import { loadOpenReferrals, loadReferralsOfVisit } from '@garboard/db/survey-visit/referrals.ts';
import type {
  AnswerRecord,
  LimitationAnswer,
  LimitationRecord,
  ReadingRecord,
  ReferralRecord,
  VisitRecord,
} from '@garboard/db/survey-visit/visit-record.ts';
import { loadAnswers, loadReadings, loadVisitEntries, type VisitEntry } from '@garboard/db/survey-visit/walked.ts';
import { type Unanswered, unanswered } from '@garboard/domain/survey-visit/unanswered.ts';

export type VisitWalk = {
  readonly answers: readonly AnswerRecord[];
  readonly readings: readonly ReadingRecord[];
  readonly entries: readonly VisitEntry[];
  /** Open ones of the vessel, and all of which the visit said something. */
  readonly findings: readonly FindingRecord[];
  readonly limitations: readonly LimitationRecord[];
  readonly limitationAnswers: readonly LimitationAnswer[];
  readonly referrals: readonly ReferralRecord[];
  readonly evidence: readonly EvidenceRecord[];
  readonly unanswered: readonly Unanswered[];
};

export async function loadWalk(tx: Scoped, visit: VisitRecord): Promise<VisitWalk> {
  const { id, vesselId, completed } = visit;
  const entries = await loadVisitEntries(tx, id);
  const answers = await loadAnswers(tx, id);
  const limitationAnswers = await loadLimitationAnswers(tx, id);
  const open = completed ? [] : await loadOpenFindings(tx, vesselId);
  const said = await loadFindingsByIds(
    tx,
    entries.map(({ findingId }) => findingId),
  );
  const unlifted = completed ? [] : await loadUnlifted(tx, vesselId);
  const ofVisit = await loadLimitationsOfVisit(tx, id);
  const referrals = [
    ...(completed ? [] : await loadOpenReferrals(tx, vesselId)),
    ...(await loadReferralsOfVisit(tx, id)),
  ];
  return {
    ...{ answers, entries, limitationAnswers },
    readings: await loadReadings(tx, id),
    evidence: await loadEvidenceOfVisit(tx, id),
    findings: onceEach([...open, ...said]),
    limitations: onceEach([...unlifted, ...ofVisit]),
    referrals: onceEach(referrals),
    unanswered: completed ? [] : leftOpen(visit, { entries, answers, open, unlifted, limitationAnswers }),
  };
}

type Ground = Pick<VisitWalk, 'entries' | 'answers' | 'limitationAnswers'> & {
  readonly open: readonly FindingRecord[];
  readonly unlifted: readonly LimitationRecord[];
};

function leftOpen({ id, route }: VisitRecord, ground: Ground): Unanswered[] {
  return unanswered({
    route,
    answeredZones: ground.answers.map(({ zone }) => zone),
    openFindings: ground.open.map(({ id: findingId, finding }) => ({
      id: findingId,
      zone: finding.zone,
      words: finding.what,
    })),
    answeredFindings: ground.entries.map(({ findingId }) => findingId),
    limitations: ground.unlifted.map(({ id: limitationId, zone, what }) => ({ id: limitationId, zone, words: what })),
    answeredLimitations: [
      ...ground.limitationAnswers.map(({ limitationId }) => limitationId),
      ...ground.unlifted.filter(({ visitId }) => visitId === id).map((each) => each.id),
    ],
  });
}

const onceEach = <T extends { readonly id: string }>(all: readonly T[]): T[] => [
  ...new Map(all.map((each) => [each.id, each])).values(),
];
