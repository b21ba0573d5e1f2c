/** The worked examples that the dashboard makes of each rule are requests that the API takes and dates. */
import type { Explained } from '@garboard/contract/item/explain.ts';
import { type Rule, workedExample } from '@garboard/dashboard/src/rule/worked-example.ts';
import { expect, it } from 'vitest';
import { signedIn } from '../support/api.ts';

const viewer = await signedIn('viewer');
const rules = await everyRule('');

async function everyRule(cursor: string): Promise<Rule[]> {
  type Page = { readonly items: Rule[]; readonly nextCursor: string | null };
  const { body } = await viewer.get<Page>(`/v1/rules?limit=200${cursor && `&cursor=${cursor}`}`);
  return body.nextCursor === null ? body.items : [...body.items, ...(await everyRule(body.nextCursor))];
}

const examples = rules.flatMap((rule) => {
  const request = workedExample(rule, '2026-11-25');
  return request ? [{ id: rule.id, request }] : [];
});
const dated: string[] = [];

it.each(examples)('$id', async ({ id, request }) => {
  const { status, text, body } = await viewer.post<Explained>('/v1/due-dates/explain', request);

  expect(status, text).toBe(200);
  if (body.items.some(({ ruleId, dueOn }) => ruleId === id && dueOn)) dated.push(id);
});

it('nearly every rule with a duty has an example with a date', () => {
  const withDuties = rules.filter(({ duties }) => duties.length > 0).map(({ id }) => id);
  const undated = withDuties.filter((id) => !dated.includes(id));
  expect(undated.length, undated.join(' ')).toBeLessThan(withDuties.length / 10);
});
