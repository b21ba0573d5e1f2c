/** The bytes of one part of a file. What is shown of it can be drawn again from what came; what came cannot. */
import { blobName, type Part } from '@garboard/blobs/evidence/names.ts';
import type { Files } from '@garboard/blobs/files.ts';
import type { EvidenceRecord } from '@garboard/db/evidence/evidence.ts';

type Of = Pick<EvidenceRecord, 'sha256'> & { readonly organisationId: string };

export async function partOf(
  { store, inspect }: Files,
  { organisationId, sha256 }: Of,
  part: Part,
): Promise<Uint8Array | 'missing'> {
  const there = await store.get(blobName(organisationId, sha256, part));
  if (there !== 'missing' || part === 'original') return there;
  const original = await store.get(blobName(organisationId, sha256, 'original'));
  const drawn = original === 'missing' ? null : await inspect(original);
  if (drawn?.kind !== 'picture') return 'missing';
  await store.put(blobName(organisationId, sha256, part), drawn.views[part]);
  return drawn.views[part];
}
