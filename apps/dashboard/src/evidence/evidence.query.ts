/** Photographs and papers: what is asked of the API. */
import { answer, everyPage } from '@garboard/client/client.ts';
import type { components } from '@garboard/client/generated/api.d.ts';
import { queryOptions } from '@tanstack/react-query';
import { api } from '../api/client.ts';

export type EvidenceFile = components['schemas']['EvidenceFile'];

export const vesselEvidenceQuery = (vesselId: string) =>
  queryOptions({
    queryKey: ['evidence', 'vessel', vesselId],
    queryFn: ({ signal }): Promise<EvidenceFile[]> =>
      everyPage((cursor) =>
        answer(
          api.GET('/v1/vessels/{vesselId}/evidence', {
            params: { path: { vesselId }, query: { limit: 200, ...(cursor && { cursor }) } },
            signal,
          }),
        ),
      ),
  });

/** It never changes. */
export const evidenceQuery = (evidenceId: string) =>
  queryOptions({
    queryKey: ['evidence', evidenceId],
    queryFn: ({ signal }) => answer(api.GET('/v1/evidence/{evidenceId}', { params: { path: { evidenceId } }, signal })),
    staleTime: Number.POSITIVE_INFINITY,
  });

export const viewOf = (evidenceId: string, size: 'large' | 'small') => `/v1/evidence/${evidenceId}/view?size=${size}`;
export const originalOf = (evidenceId: string) => `/v1/evidence/${evidenceId}/original`;
