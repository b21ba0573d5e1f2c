/** A visit and what belongs to it, as the API shows them. */
import type { Addendum, Visit } from '@garboard/contract/survey-visit/visit.ts';
import type { Limitation, Reading, Referral, ZoneAnswer } from '@garboard/contract/survey-visit/walk.ts';
import type {
  AddendumRecord,
  AnswerRecord,
  LimitationRecord,
  ReadingRecord,
  ReferralRecord,
  VisitRecord,
} from '@garboard/db/survey-visit/visit-record.ts';
import { heldAgainst } from '@garboard/domain/reading/published-limits.ts';
import { checkOn } from '@garboard/domain/survey-visit/instrument.ts';
import { withoutNulls } from '../request/without-nulls.ts';

export function presentVisit(visit: VisitRecord): Visit {
  const { id, craft, purpose, startedOn, detail, route, completed } = visit;
  const { persons, instruments, ...attendance } = detail;
  return {
    ...withoutNulls(attendance),
    ...{ id, craft, purpose, startedOn, vessel: { id: visit.vesselId, name: visit.vesselName } },
    persons: persons.map((person) => withoutNulls(person)) as Visit['persons'],
    instruments: instruments.map((instrument) => withoutNulls(instrument)),
    state: completed ? 'completed' : 'open',
    ...(completed && { completedOn: completed.on, sealedHash: completed.hash }),
    route: route.map(({ zone, name }) => ({ zone, name })),
  };
}

export const presentAnswer = (answer: AnswerRecord) => withoutNulls(answer) as ZoneAnswer;
export const presentAddendum = (addendum: AddendumRecord): Addendum => ({ ...addendum });

/** Beside each reading stands whether its instrument was in check on the day. */
export function presentReading(reading: ReadingRecord, { detail }: VisitRecord): Reading {
  const instrument = detail.instruments.find(({ key }) => key === reading.instrument);
  const check = instrument ? checkOn(instrument, reading.takenOn) : 'unknown';
  return { ...(withoutNulls(reading) as Omit<Reading, 'check'>), check, ...limitOf(reading) };
}

function limitOf(reading: ReadingRecord): Pick<Reading, 'limit'> {
  const held = heldAgainst(reading);
  if (held.kind === 'no_limit') return {};
  const { atLeast, inWords, source } = held.limit;
  return { limit: { within: held.kind === 'within', atLeast, inWords, source } };
}

export function presentLimitation({ vesselId, vesselName, version: _, ...record }: LimitationRecord): Limitation {
  return { ...(withoutNulls(record) as Omit<Limitation, 'vessel'>), vessel: { id: vesselId, name: vesselName } };
}

export function presentReferral({ vesselId, vesselName, version: _, result, ...record }: ReferralRecord): Referral {
  return {
    ...(withoutNulls(record) as Omit<Referral, 'vessel'>),
    vessel: { id: vesselId, name: vesselName },
    ...(result && { result: presentResult(result) }),
  };
}

function presentResult({ on, by, qualification, words }: NonNullable<ReferralRecord['result']>) {
  return { on, by, words, ...(qualification !== null && { qualification }) };
}
