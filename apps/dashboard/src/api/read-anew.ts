import type { QueryClient } from '@tanstack/react-query';

/** After a change anything may read differently; who is signed in does not. */
export const readAnew = (queries: QueryClient): Promise<void> =>
  queries.invalidateQueries({ predicate: ({ queryKey }) => queryKey[0] !== 'session' });
