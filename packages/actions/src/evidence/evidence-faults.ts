/** What an entry names as evidence, held against what is there: a file that it names is one of the same vessel. */
import { loadEvidenceIds } from '@garboard/db/evidence/evidence.ts';
import type { Scoped } from '@garboard/db/scope.ts';
import type { Evidence } from '@garboard/domain/finding/entry.ts';
import type { Fault } from '../result.ts';

export async function evidenceFaults(tx: Scoped, vesselId: string, named: readonly Evidence[]): Promise<Fault[]> {
  const ids = named.flatMap(({ evidenceId }) => (evidenceId === null ? [] : [evidenceId]));
  const known = await loadEvidenceIds(tx, vesselId, ids);
  return named.flatMap(({ evidenceId }, at) =>
    evidenceId === null || known.has(evidenceId)
      ? []
      : [{ pointer: `/evidence/${at}/evidenceId`, detail: 'is no file of this vessel' }],
  );
}
