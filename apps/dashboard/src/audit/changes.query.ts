import { answer } from '@garboard/client/client.ts';
import type { components } from '@garboard/client/generated/api.d.ts';
import { infiniteQueryOptions } from '@tanstack/react-query';
import { api } from '../api/client.ts';
import type { ChangesSearch } from './changes-search.ts';

export type Change = components['schemas']['AuditEntry'];

export const changesQuery = ({ subject, who, vessel, from, to }: ChangesSearch) => {
  const filters = {
    ...(subject && { subject }),
    ...(who && { actor: who }),
    ...(vessel && { vesselId: vessel }),
    ...(from && { from }),
    ...(to && { to }),
  };
  return infiniteQueryOptions({
    queryKey: ['changes', filters],
    queryFn: ({ pageParam, signal }) =>
      answer(
        api.GET('/v1/audit', { params: { query: { ...filters, ...(pageParam && { cursor: pageParam }) } }, signal }),
      ),
    initialPageParam: '',
    getNextPageParam: ({ nextCursor }) => nextCursor ?? undefined,
  });
};
