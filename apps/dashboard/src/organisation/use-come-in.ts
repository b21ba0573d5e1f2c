import { useQueryClient } from '@tanstack/react-query';

/** Somebody else is there now: nothing that was read before is theirs, and the page is read anew for them. */
export function useComeIn(): () => Promise<void> {
  const queries = useQueryClient();
  return () => queries.resetQueries();
}
