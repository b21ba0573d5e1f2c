/** The one way in which an entry is added to a finding: loaded in scope, judged, written, and what follows worked out. */
import { insertEntry } from '@garboard/db/finding/entries.ts';
import type { FindingRecord } from '@garboard/db/finding/finding-record.ts';
import { loadFinding, saveFinding } from '@garboard/db/finding/findings.ts';
import { type FindingView, loadFindingView } from '@garboard/db/finding/list-findings.ts';
import { loadTerms } from '@garboard/db/finding/terms.ts';
import { lockVessel } from '@garboard/db/vessel/vessels.ts';
import { addDays, formatDay } from '@garboard/domain/calendar/day.ts';
import { dayInZone } from '@garboard/domain/calendar/day-in-zone.ts';
import type { Entry, Step } from '@garboard/domain/finding/entry.ts';
import { readEntry } from '@garboard/domain/finding/finding.ts';
import { type Ground, type Judged, judgeStep } from '@garboard/domain/finding/judge-step.ts';
import { readsAs } from '@garboard/domain/finding/words.ts';
import { actorText, audit } from '../audit.ts';
import { evidenceFaults } from '../evidence/evidence-faults.ts';
import { newId } from '../new-id.ts';
import { done, type FailureKind, type Refused, type Result, refused } from '../result.ts';
import type { Write } from '../write.ts';
import { refreshMatters } from './refresh-matters.ts';
import { ruleLimitOf } from './rule-limit.ts';

export type At = { readonly findingId: string; readonly expectedVersion: number };
export type StepRefusal = 'not_found' | 'stale' | 'invalid' | 'conflict';

export type Locked = { readonly record: FindingRecord; readonly ground: Ground; readonly timeZone: string };

/** The finding with the vessel's row locked, if it is still as it was read. */
export async function lockFinding(
  { tx, ctx }: Write,
  { findingId, expectedVersion }: At,
): Promise<Result<Locked, StepRefusal>> {
  const found = await loadFinding(tx, findingId);
  const vessel = found && (await lockVessel(tx, found.vesselId));
  const record = vessel && (await loadFinding(tx, findingId));
  if (!record || !vessel) return refused({ kind: 'not_found' });
  if (record.version !== expectedVersion) return refused({ kind: 'stale', version: record.version });
  const { terms } = await loadTerms(tx);
  const today = dayInZone(ctx.now, vessel.timeZone);
  const ground = {
    today: formatDay(today),
    role: ctx.actor.role,
    surveyorAttends: false,
    reviewBy: formatDay(addDays(today, terms.putOffAtMostDays)),
    ruleLimit: await ruleLimitOf(tx, record.finding),
    secondPairOfEyes: terms.secondPairOfEyes,
  };
  return done({ record, ground, timeZone: vessel.timeZone });
}

/** `on`: the day it speaks of; today where it says nothing of one. */
export function entryOf({ ctx }: Write, step: Step, on: string): Entry {
  return { id: newId(ctx.now), by: actorText(ctx.actor), on, recordedAt: ctx.now.toISOString(), ...step };
}

/** What a reader wants to know of it after the act. */
export async function told<K extends FailureKind>(
  { tx }: Write,
  result: Result<FindingRecord, K>,
): Promise<Result<FindingView, K>> {
  if (!result.ok) return result;
  const view = await loadFindingView(tx, result.value.id);
  if (!view) throw new Error(`finding ${result.value.id} is gone`);
  return done(view);
}

/** Judges the entry and writes it with what it comes to. */
export async function addEntry(
  write: Write,
  { record, ground }: Locked,
  entry: Entry,
): Promise<Result<FindingRecord, StepRefusal>> {
  const judged = judgeStep(record.finding, entry, ground);
  const refusal = refusalOf(judged, record);
  if (refusal) return refusal;
  const errors = 'evidence' in entry ? await evidenceFaults(write.tx, record.vesselId, entry.evidence) : [];
  return errors.length > 0 ? refused({ kind: 'invalid', errors }) : done(await noteEntry(write, record, entry));
}

/** Writes an entry that needs no judging: what another finding's own step has brought about. */
export async function noteEntry(write: Write, record: FindingRecord, entry: Entry): Promise<FindingRecord> {
  const { tx, ctx } = write;
  const finding = readEntry(record.finding, entry);
  await insertEntry(tx, { organisationId: ctx.organisationId, findingId: record.id, vesselId: record.vesselId }, entry);
  const version = await saveFinding(tx, record, finding);
  if (version === null) throw new Error(`finding ${record.id} changed though its vessel was locked`);
  const after = { ...record, finding, version };
  await refreshMatters(tx, ctx.organisationId, record.vesselId, [after]);
  audit(write, {
    verb: `finding_${entry.step}`,
    subject: 'finding',
    subjectId: record.id,
    before: { version: record.version, state: record.finding.remedy.state, urgency: record.finding.urgency },
    after: { vesselId: record.vesselId, version, state: finding.remedy.state, urgency: finding.urgency, entry },
  });
  return after;
}

function refusalOf(judged: Judged, { finding }: FindingRecord): Refused<'conflict' | 'invalid'> | null {
  switch (judged.kind) {
    case 'taken':
      return null;
    case 'not_from_here':
      return refused({
        kind: 'conflict',
        detail: `It cannot be ${WORDS[judged.step]} now. It stands as: ${readsAs(finding)}.`,
      });
    case 'faults':
      return refused({ kind: 'invalid', errors: judged.faults });
  }
}

/** Completes "it cannot be …". */
const WORDS = {
  proposed: 'given a proposal',
  planned: 'planned',
  begun: 'begun',
  reported_done: 'reported done',
  sent_back: 'sent back',
  verified: 'verified',
  deferred: 'put off',
  accepted: 'accepted',
  entered_in_error: 'closed as entered in error',
  reopened: 'reopened',
  merged_into: 'merged into another',
  seen_gone: 'seen gone',
  seen_still_there: 'seen again',
  seen_worse: 'seen worse',
  seen: 'answered by a visit',
  amended: 'changed',
  split_off: 'split',
  owner_answered: 'answered by her owner',
} as const satisfies Record<Extract<Judged, { kind: 'not_from_here' }>['step'], string>;
