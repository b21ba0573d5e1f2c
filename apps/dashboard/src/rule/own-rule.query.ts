import { answer, everyPage } from '@garboard/client/client.ts';
import type { components } from '@garboard/client/generated/api.d.ts';
import { queryOptions } from '@tanstack/react-query';
import { api } from '../api/client.ts';
import type { NewOwnRule } from './own-rule-draft.ts';

type Rule = components['schemas']['Rule'];
export type VesselName = { readonly id: string; readonly name: string };
export type Ending = components['schemas']['NewOwnRuleEnding'];

export const vesselNamesQuery = () =>
  queryOptions({
    queryKey: ['vessel-names'],
    queryFn: ({ signal }): Promise<VesselName[]> =>
      everyPage((cursor) =>
        answer(api.GET('/v1/vessels', { params: { query: { limit: 200, ...(cursor && { cursor }) } }, signal })),
      ),
  });

/** Asked again while it goes on. */
export const ruleChangeQuery = (changeId: string) =>
  queryOptions({
    queryKey: ['rule-change', changeId],
    queryFn: ({ signal }) => answer(api.GET('/v1/rule-changes/{changeId}', { params: { path: { changeId } }, signal })),
    refetchInterval: ({ state }) => (state.data?.state === 'running' ? 1_500 : false),
  });

export function addRule(body: NewOwnRule, key: string): Promise<Rule> {
  return answer(api.POST('/v1/rules', { params: { header: { 'Idempotency-Key': key } }, body }));
}

/** `version`: of the rule as it was read. */
export function changeRule(ruleId: string, version: number, body: NewOwnRule, key: string): Promise<Rule> {
  return answer(api.PUT('/v1/rules/{ruleId}', { params: { path: { ruleId }, header: writing(version, key) }, body }));
}

export function endRule(ruleId: string, version: number, body: Ending, key: string): Promise<Rule> {
  const params = { path: { ruleId }, header: writing(version, key) };
  return answer(api.POST('/v1/rules/{ruleId}/ending', { params, body }));
}

const writing = (version: number, key: string) => ({ 'If-Match': `"${version}"`, 'Idempotency-Key': key });
