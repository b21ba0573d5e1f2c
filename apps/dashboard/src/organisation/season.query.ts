import { queryOptions } from '@tanstack/react-query';
import { api } from '../api/client.ts';
import { versioned } from '../api/versioned.ts';

export const seasonQuery = () =>
  queryOptions({
    queryKey: ['season'],
    queryFn: ({ signal }) => versioned(api.GET('/v1/season', { signal })),
  });
