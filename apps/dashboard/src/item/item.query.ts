import { answer, everyPage } from '@garboard/client/client.ts';
import type { components } from '@garboard/client/generated/api.d.ts';
import { queryOptions } from '@tanstack/react-query';
import { api } from '../api/client.ts';
import { versioned } from '../api/versioned.ts';

export type Item = components['schemas']['Item'];
export type Fact = components['schemas']['Fact'];
export type Obligation = components['schemas']['Obligation'];
export type Explanation = components['schemas']['Explanation'];

export const itemQuery = (itemId: string) =>
  queryOptions({
    queryKey: ['item', itemId],
    queryFn: ({ signal }) => versioned(api.GET('/v1/items/{itemId}', { params: { path: { itemId } }, signal })),
  });

export const itemsQuery = (vesselId: string) =>
  queryOptions({
    queryKey: ['vessel', vesselId, 'items'],
    queryFn: ({ signal }): Promise<Item[]> =>
      everyPage((cursor) =>
        answer(
          api.GET('/v1/vessels/{vesselId}/items', {
            params: { path: { vesselId }, query: { limit: 200, ...(cursor && { cursor }) } },
            signal,
          }),
        ),
      ),
  });

export const factsQuery = (itemId: string) =>
  queryOptions({
    queryKey: ['item', itemId, 'facts'],
    queryFn: ({ signal }): Promise<Fact[]> =>
      everyPage((cursor) =>
        answer(
          api.GET('/v1/items/{itemId}/facts', {
            params: { path: { itemId }, query: { limit: 200, ...(cursor && { cursor }) } },
            signal,
          }),
        ),
      ),
  });

export const obligationsQuery = (itemId: string, asOf: string | undefined) =>
  queryOptions({
    queryKey: ['item', itemId, 'obligations', asOf ?? 'today'],
    queryFn: ({ signal }) =>
      answer(
        api.GET('/v1/items/{itemId}/obligations', {
          params: { path: { itemId }, query: asOf ? { asOf } : {} },
          signal,
        }),
      ),
  });
