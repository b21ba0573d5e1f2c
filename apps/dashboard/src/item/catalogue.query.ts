import { answer, everyPage } from '@garboard/client/client.ts';
import type { components } from '@garboard/client/generated/api.d.ts';
import { queryOptions } from '@tanstack/react-query';
import { api } from '../api/client.ts';

export type ItemKind = components['schemas']['ItemKind'];
type Rule = components['schemas']['Rule'];

/** The catalogue changes with the program, never under a page that is open. */
export const FOR_GOOD = { staleTime: Number.POSITIVE_INFINITY, gcTime: Number.POSITIVE_INFINITY };

export const itemKindsQuery = () =>
  queryOptions({
    queryKey: ['item-kinds'],
    queryFn: ({ signal }): Promise<ItemKind[]> =>
      everyPage((cursor) =>
        answer(api.GET('/v1/item-kinds', { params: { query: { limit: 200, ...(cursor && { cursor }) } }, signal })),
      ),
    ...FOR_GOOD,
  });

/** An organisation's own rules come and go. */
export const rulesQuery = () =>
  queryOptions({
    queryKey: ['rules'],
    queryFn: ({ signal }): Promise<Rule[]> =>
      everyPage((cursor) =>
        answer(api.GET('/v1/rules', { params: { query: { limit: 200, ...(cursor && { cursor }) } }, signal })),
      ),
  });
