/** What a link gives somebody to do: the work of a yard in its order, or what waits for an owner's yes or no. */
import type { FindingRecord } from '../finding/finding-record.ts';
import { loadFindingsByIds, loadOpenFindings } from '../finding/findings.ts';
import type { Scoped } from '../scope.ts';
import type { ShownLink } from './share-links.ts';

export type GivenWork = { readonly at: number; readonly vesselName: string; readonly record: FindingRecord };
export type SharedWork = { readonly work: readonly GivenWork[]; readonly offers: readonly FindingRecord[] };

export async function readWork(tx: Scoped, link: ShownLink): Promise<SharedWork> {
  switch (link.purpose) {
    case 'look':
      return { work: [], offers: [] };
    case 'yard':
      return { work: await givenWork(tx, link.findingIds), offers: [] };
    case 'owner':
      return { work: [], offers: await offersFor(tx, link) };
  }
}

async function givenWork(tx: Scoped, findingIds: readonly string[]): Promise<GivenWork[]> {
  const records = new Map((await loadFindingsByIds(tx, findingIds)).map((record) => [record.id, record]));
  const ids = [...new Set([...records.values()].map(({ vesselId }) => vesselId))];
  const rows =
    ids.length === 0 ? [] : await tx.selectFrom('vessel').select(['id', 'name']).where('id', 'in', ids).execute();
  const names = new Map(rows.map(({ id, name }) => [id, name]));
  return findingIds.flatMap((id, at) => {
    const record = records.get(id);
    return record ? [{ at, record, vesselName: names.get(record.vesselId) ?? '' }] : [];
  });
}

async function offersFor(tx: Scoped, { vesselIds }: ShownLink): Promise<FindingRecord[]> {
  const [vesselId] = vesselIds === 'all' ? [] : vesselIds;
  if (vesselId === undefined) return [];
  return (await loadOpenFindings(tx, vesselId)).filter(({ finding }) => finding.estimate !== null);
}
