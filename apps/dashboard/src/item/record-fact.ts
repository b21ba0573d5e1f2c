import { answer } from '@garboard/client/client.ts';
import type { components } from '@garboard/client/generated/api.d.ts';
import { api } from '../api/client.ts';
import type { NewFact } from './fact-draft.ts';

export type RecordedFact = components['schemas']['RecordedFact'];
export type Recording = { itemId: string; body: NewFact; key: string };

export function recordFact({ itemId, body, key }: Recording): Promise<RecordedFact> {
  return answer(
    api.POST('/v1/items/{itemId}/facts', { params: { path: { itemId }, header: { 'Idempotency-Key': key } }, body }),
  );
}
