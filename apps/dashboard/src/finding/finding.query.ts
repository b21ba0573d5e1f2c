/** Findings: what is asked of the API, and what is done. */
import { answer, everyPage } from '@garboard/client/client.ts';
import type { components, paths } from '@garboard/client/generated/api.d.ts';
import { infiniteQueryOptions, queryOptions } from '@tanstack/react-query';
import { api } from '../api/client.ts';
import { versioned } from '../api/versioned.ts';

type Schemas = components['schemas'];
export type Finding = Schemas['Finding'];
export type FindingEntry = Schemas['FindingEntry'];
export type FindingsQuery = NonNullable<paths['/v1/findings']['get']['parameters']['query']>;

const PAGE = 100;

export const findingsQuery = (query: FindingsQuery) =>
  infiniteQueryOptions({
    queryKey: ['findings', query],
    queryFn: ({ pageParam, signal }) =>
      answer(
        api.GET('/v1/findings', {
          params: { query: { ...query, limit: PAGE, ...(pageParam && { cursor: pageParam }) } },
          signal,
        }),
      ),
    initialPageParam: '',
    getNextPageParam: (last) => last.nextCursor,
  });

/** Every open finding of one vessel, the most urgent first. */
export const vesselFindingsQuery = (vesselId: string) =>
  queryOptions({
    queryKey: ['findings', 'vessel', vesselId],
    queryFn: ({ signal }): Promise<Finding[]> =>
      everyPage((cursor) =>
        answer(
          api.GET('/v1/findings', {
            params: { query: { vesselId, open: 'true', limit: 200, ...(cursor && { cursor }) } },
            signal,
          }),
        ),
      ),
  });

export const findingQuery = (findingId: string) =>
  queryOptions({
    queryKey: ['finding', findingId],
    queryFn: ({ signal }) =>
      versioned(api.GET('/v1/findings/{findingId}', { params: { path: { findingId } }, signal })),
  });

export const storyQuery = (findingId: string) =>
  queryOptions({
    queryKey: ['finding', findingId, 'story'],
    queryFn: ({ signal }): Promise<FindingEntry[]> =>
      everyPage((cursor) =>
        answer(
          api.GET('/v1/findings/{findingId}/entries', {
            params: { path: { findingId }, query: { limit: 200, ...(cursor && { cursor }) } },
            signal,
          }),
        ),
      ),
  });

export const alikeQuery = (vesselId: string, query: { zone: string; what: string; itemId?: string }) =>
  queryOptions({
    queryKey: ['findings', 'alike', vesselId, query],
    queryFn: ({ signal }) =>
      answer(api.GET('/v1/vessels/{vesselId}/findings/alike', { params: { path: { vesselId }, query }, signal })),
  });

/** Which act, with what it says. */
export type Said =
  | { readonly act: 'sighting'; readonly body: Schemas['NewSighting'] }
  | { readonly act: 'remedy'; readonly body: Schemas['RemedyStep'] }
  | { readonly act: 'verification'; readonly body: Schemas['Verification'] }
  | { readonly act: 'change'; readonly body: Schemas['FindingChange'] };

export function send(findingId: string, said: Said, version: string, once: string): Promise<Finding> {
  const params = { path: { findingId }, header: { 'If-Match': version, 'Idempotency-Key': once } };
  switch (said.act) {
    case 'sighting':
      return answer(api.POST('/v1/findings/{findingId}/sightings', { params, body: said.body }));
    case 'remedy':
      return answer(api.POST('/v1/findings/{findingId}/remedy', { params, body: said.body }));
    case 'verification':
      return answer(api.POST('/v1/findings/{findingId}/verification', { params, body: said.body }));
    case 'change':
      return answer(
        api.PATCH('/v1/findings/{findingId}', {
          params: { path: { findingId }, header: { 'If-Match': version } },
          body: said.body,
        }),
      );
  }
}

export const enterFinding = (vesselId: string, body: Schemas['NewFinding'], once: string): Promise<Finding> =>
  answer(
    api.POST('/v1/vessels/{vesselId}/findings', {
      params: { path: { vesselId }, header: { 'Idempotency-Key': once } },
      body,
    }),
  );
