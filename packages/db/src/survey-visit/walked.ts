/** What was written on a visit: answers of places, readings, addenda. Only ever added. */
import type { Entry } from '@garboard/domain/finding/entry.ts';
import { sql } from 'kysely';
import { toEntry } from '../finding/entries.ts';
import type { Scoped } from '../scope.ts';
import type { AddendumRecord, AnswerRecord, ReadingRecord, VisitRecord } from './visit-record.ts';

type Of = { readonly organisationId: string; readonly visit: Pick<VisitRecord, 'id' | 'vesselId'> };
type By = { readonly recordedBy: string; readonly recordedAt: string };

const columns = ({ organisationId, visit }: Of, id: string, { recordedBy, recordedAt }: By) => ({
  organisation_id: organisationId,
  id,
  visit_id: visit.id,
  vessel_id: visit.vesselId,
  recorded_by: recordedBy,
  recorded_at: recordedAt,
});

export async function insertAnswer(tx: Scoped, of: Of, record: AnswerRecord): Promise<void> {
  const { id, zone, answer, reason, words } = record;
  await tx
    .insertInto('visit_answer')
    .values({ ...columns(of, id, record), zone, answer, reason, words })
    .execute();
}

export async function insertReading(tx: Scoped, of: Of, record: ReadingRecord & By): Promise<void> {
  const { id, zone, point, measure, value, unit, instrument, words, takenOn } = record;
  await tx
    .insertInto('reading')
    .values({ ...columns(of, id, record), zone, point, measure, value, unit, instrument, words, taken_on: takenOn })
    .execute();
}

export async function insertAddendum(tx: Scoped, of: Of, record: AddendumRecord): Promise<void> {
  const { id, name, words, reason } = record;
  await tx
    .insertInto('visit_addendum')
    .values({ ...columns(of, id, record), name, words, reason })
    .execute();
}

/** Every answer, the earlier ones of a place too. */
export async function loadAnswers(tx: Scoped, visitId: string): Promise<AnswerRecord[]> {
  const rows = await tx.selectFrom('visit_answer').selectAll().where('visit_id', '=', visitId).orderBy('id').execute();
  return rows.map(({ id, zone, answer, reason, words, recorded_by, recorded_at }) => ({
    ...{ id, zone, answer, reason, words },
    recordedBy: recorded_by,
    recordedAt: recorded_at.toISOString(),
  }));
}

export async function loadReadings(tx: Scoped, visitId: string): Promise<ReadingRecord[]> {
  const rows = await tx.selectFrom('reading').selectAll().where('visit_id', '=', visitId).orderBy('id').execute();
  return rows.map(({ id, zone, point, measure, value, unit, instrument, words, taken_on }) => ({
    ...{ id, zone, point, measure, value, unit, instrument, words },
    takenOn: taken_on,
  }));
}

/** Where something was ever measured or photographed on her, by place. */
export async function loadPoints(tx: Scoped, vesselId: string): Promise<{ zone: string; point: string }[]> {
  const measured = tx.selectFrom('reading').select(['zone', 'point']).where('vessel_id', '=', vesselId);
  const shown = tx
    .selectFrom('evidence')
    .select([sql<string>`zone`.as('zone'), sql<string>`point`.as('point')])
    .where('vessel_id', '=', vesselId)
    .where('point', 'is not', null);
  return measured.union(shown).orderBy('point').execute();
}

export async function loadAddenda(tx: Scoped, visitId: string): Promise<AddendumRecord[]> {
  const rows = await tx
    .selectFrom('visit_addendum')
    .selectAll()
    .where('visit_id', '=', visitId)
    .orderBy('id')
    .execute();
  return rows.map(({ id, name, words, reason, recorded_by, recorded_at }) => ({
    ...{ id, name, words, reason },
    recordedBy: recorded_by,
    recordedAt: recorded_at.toISOString(),
  }));
}

export type VisitEntry = { readonly findingId: string; readonly entry: Entry };

/** What the visit said of findings. */
export async function loadVisitEntries(tx: Scoped, visitId: string): Promise<VisitEntry[]> {
  const rows = await tx.selectFrom('finding_entry').selectAll().where('visit_id', '=', visitId).orderBy('id').execute();
  return rows.map((row) => ({ findingId: row.finding_id, entry: toEntry(row) }));
}
