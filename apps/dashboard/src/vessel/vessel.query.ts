import { answer, everyPage } from '@garboard/client/client.ts';
import type { components } from '@garboard/client/generated/api.d.ts';
import { queryOptions } from '@tanstack/react-query';
import { api } from '../api/client.ts';
import { versioned } from '../api/versioned.ts';

type Situation = components['schemas']['Situation'];

export const vesselQuery = (vesselId: string) =>
  queryOptions({
    queryKey: ['vessel', vesselId],
    queryFn: ({ signal }) => answer(api.GET('/v1/vessels/{vesselId}', { params: { path: { vesselId } }, signal })),
  });

/** With the version that a change of her must name. */
export const versionedVesselQuery = (vesselId: string) =>
  queryOptions({
    queryKey: ['vessel', vesselId, 'versioned'],
    queryFn: ({ signal }) => versioned(api.GET('/v1/vessels/{vesselId}', { params: { path: { vesselId } }, signal })),
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
