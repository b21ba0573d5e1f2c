/** Links for outsiders: what is asked, and what is done. */
import { answer, everyPage } from '@garboard/client/client.ts';
import type { components } from '@garboard/client/generated/api.d.ts';
import { queryOptions } from '@tanstack/react-query';
import { api } from '../api/client.ts';

type Schemas = components['schemas'];
export type ShareLink = Schemas['ShareLink'];
export type WithToken = Schemas['ShareLinkWithText'];
export type SharedView = Schemas['SharedView'];

export const shareLinksQuery = () =>
  queryOptions({
    queryKey: ['share-links'],
    queryFn: ({ signal }): Promise<ShareLink[]> =>
      everyPage((cursor) =>
        answer(api.GET('/v1/share-links', { params: { query: { limit: 200, ...(cursor && { cursor }) } }, signal })),
      ),
  });

export const makeShareLink = (body: Schemas['NewShareLink'], once: string) =>
  answer(api.POST('/v1/share-links', { params: { header: { 'Idempotency-Key': once } }, body }));

export const revokeShareLink = ({ id, version }: ShareLink, once: string) =>
  answer(
    api.POST('/v1/share-links/{linkId}/revocation', {
      params: { path: { linkId: id }, header: { 'If-Match': `"${version}"`, 'Idempotency-Key': once } },
      body: {},
    }),
  );

export const reportByLink = (body: Schemas['SharedReport']) => answer(api.POST('/v1/shared/reports', { body }));
export const answerByLink = (body: Schemas['SharedAnswer']) => answer(api.POST('/v1/shared/answers', { body }));

/** Looked at once a visit: each look is counted. */
export const sharedQuery = (token: string) =>
  queryOptions({
    queryKey: ['shared', token],
    queryFn: (): Promise<SharedView> => answer(api.POST('/v1/shared/look', { body: { token } })),
    staleTime: Number.POSITIVE_INFINITY,
    retry: false,
  });
