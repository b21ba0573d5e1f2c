import { answer } from '@garboard/client/client.ts';
import type { components } from '@garboard/client/generated/api.d.ts';
import { keepPreviousData, queryOptions } from '@tanstack/react-query';
import { api } from '../api/client.ts';

export type SearchAnswer = components['schemas']['SearchAnswer'];

/** What was found before stays until what is asked now has come, so that the list does not jump at each letter. */
export const searchQuery = (words: string) =>
  queryOptions({
    queryKey: ['search', words],
    queryFn: ({ signal }) => answer(api.GET('/v1/search', { params: { query: { q: words } }, signal })),
    enabled: words !== '',
    placeholderData: keepPreviousData,
  });
