import { queryOptions } from '@tanstack/react-query';
import { answer, api, everyPage } from '../api/client.ts';
import type { components } from '../generated/api.d.ts';

type Situation = components['schemas']['Situation'];

export const vesselQuery = (vesselId: string) =>
  queryOptions({
    queryKey: ['vessel', vesselId],
    queryFn: ({ signal }) => answer(api.GET('/v1/vessels/{vesselId}', { params: { path: { vesselId } }, signal })),
  });

export const situationsQuery = (vesselId: string) =>
  queryOptions({
    queryKey: ['vessel', vesselId, 'situations'],
    queryFn: ({ signal }): Promise<Situation[]> =>
      everyPage((cursor) =>
        answer(
          api.GET('/v1/vessels/{vesselId}/situations', {
            params: { path: { vesselId }, query: { limit: 200, ...(cursor && { cursor }) } },
            signal,
          }),
        ),
      ),
  });
