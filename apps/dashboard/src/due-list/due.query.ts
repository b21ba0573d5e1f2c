import { answer, everyPage } from '@garboard/client/client.ts';
import type { components, paths } from '@garboard/client/generated/api.d.ts';
import { infiniteQueryOptions, queryOptions } from '@tanstack/react-query';
import { api } from '../api/client.ts';

export type DueRow = components['schemas']['DueRow'];
export type DueMatter = components['schemas']['DueMatter'];
export type DueLine = DueRow | DueMatter;

/** What a rule or a notice asks, apart from what was found. */
export const isOfRule = (line: DueLine): line is DueRow => 'ruleId' in line;
export type DueQuery = NonNullable<paths['/v1/due']['get']['parameters']['query']>;

/** A screenful; the rest is asked for. */
const PAGE = 40;

const duePage = (query: DueQuery, signal: AbortSignal) => answer(api.GET('/v1/due', { params: { query }, signal }));

export const dueQuery = (filter: DueQuery) =>
  infiniteQueryOptions({
    queryKey: ['due', filter],
    queryFn: ({ pageParam, signal }) =>
      duePage({ ...filter, limit: PAGE, ...(pageParam && { cursor: pageParam }) }, signal),
    initialPageParam: '',
    getNextPageParam: (last) => last.nextCursor,
  });

/** The organisation's counts, whatever is filtered. */
export const countsQuery = (asOf: string | undefined) =>
  queryOptions({
    queryKey: ['due', 'counts', asOf ?? 'today'],
    queryFn: ({ signal }) => duePage({ limit: 1, ...(asOf && { asOf }) }, signal),
  });

/** Everything that rules ask of one vessel, dated, suspended or without a date. */
export const vesselDueQuery = (vesselId: string, asOf: string | undefined) =>
  queryOptions({
    queryKey: ['due', 'vessel', vesselId, asOf ?? 'today'],
    queryFn: async ({ signal }) => {
      const page = (group: Pick<DueQuery, 'standing' | 'suspended'>) => (cursor: string | undefined) =>
        duePage({ vesselId, limit: 200, ...(asOf && { asOf }), ...(cursor && { cursor }), ...group }, signal);
      const groups = [{}, { suspended: 'true' }, { standing: 'unknown' }] as const;
      const [dated = [], suspended = [], undated = []] = await Promise.all(
        groups.map((group) => everyPage(page(group))),
      );
      return [...dated.filter((row) => row.standing !== 'unknown'), ...suspended, ...undated].filter(isOfRule);
    },
  });

/** What some of a vessel's things owe together. */
export const samplesQuery = (asOf: string | undefined) =>
  queryOptions({
    queryKey: ['due', 'samples', asOf ?? 'today'],
    queryFn: ({ signal }) =>
      answer(api.GET('/v1/fleet-samples', { params: { query: { ...(asOf && { asOf }) } }, signal })),
  });
