import { answer } from '@garboard/client/client.ts';
import type { components } from '@garboard/client/generated/api.d.ts';
import { queryOptions } from '@tanstack/react-query';
import { api } from '../api/client.ts';

export type Override = components['schemas']['Override'];
export type NewOverride = components['schemas']['NewOverride'];

export const overrideQuery = (overrideId: string) =>
  queryOptions({
    queryKey: ['override', overrideId],
    queryFn: ({ signal }) =>
      answer(api.GET('/v1/overrides/{overrideId}', { params: { path: { overrideId } }, signal })),
  });

export function setOverride(vesselId: string, body: NewOverride, key: string): Promise<Override> {
  const params = { path: { vesselId }, header: { 'Idempotency-Key': key } };
  return answer(api.POST('/v1/vessels/{vesselId}/overrides', { params, body }));
}

export function endOverride({ id, version }: Override, reason: string, key: string): Promise<Override> {
  const header = { 'If-Match': `"${version}"`, 'Idempotency-Key': key };
  return answer(
    api.POST('/v1/overrides/{overrideId}/ending', { params: { path: { overrideId: id }, header }, body: { reason } }),
  );
}
