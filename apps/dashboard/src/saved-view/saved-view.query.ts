import { answer, everyPage } from '@garboard/client/client.ts';
import type { components } from '@garboard/client/generated/api.d.ts';
import { queryOptions } from '@tanstack/react-query';
import { api } from '../api/client.ts';

export type SavedView = components['schemas']['SavedView'];
export type NewSavedView = components['schemas']['NewSavedView'];

export const savedViewsQuery = () =>
  queryOptions({
    queryKey: ['saved-views'],
    queryFn: ({ signal }): Promise<SavedView[]> =>
      everyPage((cursor) =>
        answer(api.GET('/v1/saved-views', { params: { query: { limit: 200, ...(cursor && { cursor }) } }, signal })),
      ),
  });

export const savedViewQuery = (viewId: string) =>
  queryOptions({
    queryKey: ['saved-views', viewId],
    queryFn: ({ signal }) => answer(api.GET('/v1/saved-views/{viewId}', { params: { path: { viewId } }, signal })),
  });

const known = ({ id, version }: SavedView) => ({
  params: { path: { viewId: id }, header: { 'If-Match': `"${version}"` } },
});

export const saveView = (body: NewSavedView, key: string) =>
  answer(api.POST('/v1/saved-views', { params: { header: { 'Idempotency-Key': key } }, body }));
export const changeView = (view: SavedView, body: components['schemas']['SavedViewChange']) =>
  answer(api.PATCH('/v1/saved-views/{viewId}', { ...known(view), body }));
export const removeView = (view: SavedView) => answer(api.DELETE('/v1/saved-views/{viewId}', known(view)));
export const restoreView = (view: SavedView) => answer(api.POST('/v1/saved-views/{viewId}/restoration', known(view)));
