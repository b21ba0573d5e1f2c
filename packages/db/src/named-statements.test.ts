import { pools } from '@garboard/tests/support/database.ts';
import { mintOrganisation } from '@garboard/tests/support/organisation.ts';
import { sql } from 'kysely';
import { describe, expect, it } from 'vitest';
import { statementNames } from './named-statements.ts';
import { inOrganisation, wholeFleet } from './scope.ts';

describe('names of statements', () => {
  it('are given to a text from the second time on, and stay', () => {
    const nameOf = statementNames();
    expect(nameOf('select 1')).toBeUndefined();
    const name = nameOf('select 1');
    expect(name).toMatch(/^[0-9a-f]{32}$/);
    expect(nameOf('select 1')).toBe(name);
    expect(nameOf('select 2')).toBeUndefined();
    expect(nameOf('select 2')).not.toBe(name);
  });

  it('run out, so that no connection fills up with plans', () => {
    const nameOf = statementNames(2);
    const texts = ['a', 'b', 'c'];
    texts.forEach(nameOf);
    expect(texts.map(nameOf).filter(Boolean)).toHaveLength(2);
  });
});

describe('the application’s pool', () => {
  it('prepares a statement that comes again, and plans it once for all parameters', async () => {
    const { id } = await mintOrganisation(pools);
    const prepared = await inOrganisation(pools.app, wholeFleet(id), async (tx) => {
      for (const n of [1, 2, 3]) await sql`select ${n}::integer as marked_for_this_test`.execute(tx);
      return sql<{ generic: number; custom: number }>`
        select generic_plans::integer as generic, custom_plans::integer as custom from pg_prepared_statements
        where statement like '%marked_for_this_test%' and statement not like '%pg_prepared%'`.execute(tx);
    });
    expect(prepared.rows).toEqual([{ generic: 2, custom: 0 }]);
  });
});
