import { answer, everyPage } from '@garboard/client/client.ts';
import type { components } from '@garboard/client/generated/api.d.ts';
import { queryOptions } from '@tanstack/react-query';
import { api } from '../api/client.ts';
import { FOR_GOOD } from '../item/catalogue.query.ts';
import type { WorkedExample } from './worked-example.ts';

export type Scheme = components['schemas']['Scheme'];

export const ruleQuery = (ruleId: string) =>
  queryOptions({
    queryKey: ['rule', ruleId],
    queryFn: ({ signal }) => answer(api.GET('/v1/rules/{ruleId}', { params: { path: { ruleId } }, signal })),
  });

export const schemesQuery = () =>
  queryOptions({
    queryKey: ['schemes'],
    queryFn: ({ signal }): Promise<Scheme[]> =>
      everyPage((cursor) =>
        answer(api.GET('/v1/schemes', { params: { query: { limit: 200, ...(cursor && { cursor }) } }, signal })),
      ),
    ...FOR_GOOD,
  });

/** What the rules make of facts that are nowhere stored. The API's own defaults are written out for its client's types. */
export const explainQuery = ({ facts, ...example }: WorkedExample) =>
  queryOptions({
    queryKey: ['explain', example, facts],
    queryFn: ({ signal }) =>
      answer(
        api.POST('/v1/due-dates/explain', {
          body: {
            attributes: {},
            events: [],
            ownRules: [],
            situations: [],
            overrides: [],
            ...example,
            facts: facts.map((fact) => ({ outcome: 'passed' as const, ...fact })),
          },
          signal,
        }),
      ),
  });
