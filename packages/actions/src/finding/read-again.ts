/** Reads a vessel's findings from their entries again, with what they want of whom. On a sound database nothing differs. */
import { isDeepStrictEqual } from 'node:util';
import { loadEntriesOfVessel } from '@garboard/db/finding/entries.ts';
import { isAsItsEntries } from '@garboard/db/finding/finding-record.ts';
import { loadFindings, saveFinding } from '@garboard/db/finding/findings.ts';
import { loadMatters } from '@garboard/db/finding/matters.ts';
import type { Scoped } from '@garboard/db/scope.ts';
import { readFinding } from '@garboard/domain/finding/finding.ts';
import { refreshVisitMatters } from '../survey-visit/refresh-visit-matters.ts';
import { refreshMatters } from './refresh-matters.ts';

/** How many differed; they are right now. The vessel's row must be locked by the caller. */
export async function readFindingsAgain(tx: Scoped, organisationId: string, vesselId: string): Promise<number> {
  const entries = await loadEntriesOfVessel(tx, vesselId);
  const stored = await loadFindings(tx, vesselId);
  const read = stored.map((row) => ({
    row,
    record: { ...row.record, finding: readFinding(entries.get(row.record.id) ?? []) },
  }));
  const differing = read.filter(({ row, record }) => !isAsItsEntries(row, record.finding));
  for (const { record } of differing) await saveFinding(tx, record, record.finding);
  const before = await loadMatters(tx, vesselId);
  await refreshMatters(
    tx,
    organisationId,
    vesselId,
    read.map(({ record }) => record),
  );
  await refreshVisitMatters(tx, organisationId, vesselId);
  const after = await loadMatters(tx, vesselId);
  return differing.length + countDifferent(before, after);
}

type ById = ReadonlyMap<string, unknown>;

function countDifferent(before: ById, after: ById): number {
  const ids = new Set([...before.keys(), ...after.keys()]);
  return [...ids].filter((id) => !isDeepStrictEqual(before.get(id), after.get(id))).length;
}
