/**
 * The plan of the due list, on one organisation of many obligations among small ones. Each expectation
 * is a trap that was measured on a prototype: a join before the limit, counts that grow with the fleet.
 */
import { randomUUID } from 'node:crypto';
import { type Day, parseDay } from '@garboard/domain/calendar/day.ts';
import { pools } from '@garboard/tests/support/database.ts';
import { mintOrganisation } from '@garboard/tests/support/organisation.ts';
import { type CompiledQuery, sql } from 'kysely';
import { beforeAll, describe, expect, it } from 'vitest';
import { inOrganisation, type Scoped, wholeFleet } from '../scope.ts';
import type { DueFilter, DueKey } from './due-entry.ts';
import { listStatement } from './list-stored.ts';

const VESSELS = 300;
const ITEMS = 40;
const PAGE = 50;
const today = parseDay('2026-11-25') as Day;
let fleet = '';

beforeAll(async () => {
  fleet = (await mintOrganisation(pools)).id;
  await inOrganisation(pools.owner, wholeFleet(fleet), (tx) => layOut(tx, fleet));
  await sql`analyze obligation, item, vessel, day_count`.execute(pools.owner);
});

/** Straight into the tables: the plan needs numbers, not sense. */
async function layOut(tx: Scoped, organisationId: string): Promise<void> {
  await sql`
    insert into vessel (organisation_id, id, name, time_zone, created_at)
    select ${organisationId}::uuid, gen_random_uuid(), 'Vessel ' || n, 'UTC', now() from generate_series(1, ${VESSELS}::int) n`.execute(
    tx,
  );
  await sql`
    insert into item (organisation_id, id, vessel_id, kind, label, quantity, created_at)
    select organisation_id, gen_random_uuid(), id, 'gas_hose', 'Hose ' || n, 1, now()
    from vessel, generate_series(1, ${ITEMS}::int) n where organisation_id = ${organisationId}::uuid`.execute(tx);
  await sql`
    insert into obligation (organisation_id, item_id, rule_id, duty, vessel_id, scheme, weight, action_kind, action_words,
                            overdue_after, due_on, due_from, windows, explanation)
    select organisation_id, id, 'lpg-hose', 'replacement', vessel_id, 'common_practice', 'common_practice', 'replace', 'Renew it',
           day, day, day - 30, '[]', '{"missing": [], "alsoCounted": [], "binds": null}'
    from (select *, date '2026-06-01' + (random() * 1500)::int as day from item where organisation_id = ${organisationId}::uuid) i`.execute(
    tx,
  );
}

type Plan = { 'Node Type': string; 'Index Name'?: string; 'Actual Rows': number; Plans?: Plan[] } & Record<
  string,
  unknown
>;

async function planOf(query: CompiledQuery): Promise<{ root: Plan; nodes: Plan[]; buffers: number }> {
  const text = `explain (analyze, buffers, format json) ${query.sql}`;
  const explained = await inOrganisation(pools.app, wholeFleet(fleet), (tx) =>
    tx.executeQuery<{ 'QUERY PLAN': [{ Plan: Plan }] }>({ ...query, sql: text }),
  );
  const root = explained.rows[0]?.['QUERY PLAN'][0].Plan;
  if (!root) throw new Error('no plan');
  return { root, nodes: all(root), buffers: Number(root['Shared Hit Blocks']) + Number(root['Shared Read Blocks']) };
}

const all = (plan: Plan): Plan[] => [plan, ...(plan.Plans ?? []).flatMap(all)];
const ask = (filter: DueFilter, after?: DueKey) =>
  listStatement({ day: today, filter, limit: PAGE, ...(after && { after }) });
const MIDDLE: DueKey = { overdueAfter: '2028-06-01', itemId: randomUUID(), ruleId: 'lpg-hose', duty: 'replacement' };

describe(`a page of ${PAGE} lines out of ${VESSELS * ITEMS}`, () => {
  it.each([
    ['the first page', ask({})],
    ['a page from the middle', ask({}, MIDDLE)],
    ['what is overdue', ask({ standing: 'overdue' })],
    ['what falls due within a year', ask({ horizonDays: 365 })],
  ])('reads %s from the index in order and joins the names afterwards', async (_, query) => {
    const { nodes, buffers } = await planOf(query);
    const scan = nodes.find(({ 'Index Name': index }) => index === 'obligation_due');

    expect(scan?.['Actual Rows']).toBeLessThanOrEqual(PAGE + 1);
    expect(nodes.filter((node) => node['Node Type'] === 'Seq Scan').map((node) => node['Relation Name'])).not.toContain(
      'obligation',
    );
    expect(nodes.filter((node) => node['Node Type'] === 'Sort' && node['Actual Rows'] > PAGE + 1)).toEqual([]);
    expect(buffers).toBeLessThanOrEqual(250);
  });

  it('costs a later page no more than the first', async () => {
    const first = await planOf(ask({}));
    const middle = await planOf(ask({}, MIDDLE));
    expect(middle.buffers).toBeLessThanOrEqual(first.buffers * 1.5);
  });

  it('makes its text once for each set of filters', () => {
    expect(ask({ standing: 'due' }).sql).toBe(
      listStatement({ day: (today + 9) as Day, filter: { standing: 'due' }, limit: PAGE }).sql,
    );
    expect(ask({}).sql).toContain(`limit ${PAGE + 1}`);
  });
});
