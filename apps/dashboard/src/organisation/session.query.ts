import { answer } from '@garboard/client/client.ts';
import { queryOptions } from '@tanstack/react-query';
import { api } from '../api/client.ts';

/** Asked once: a form half filled in must not vanish because the window got the focus back. */
export const sessionQuery = () =>
  queryOptions({
    queryKey: ['session'],
    queryFn: ({ signal }) => answer(api.GET('/v1/session', { signal })),
    staleTime: Number.POSITIVE_INFINITY,
    retry: false,
  });
