/** The library's tables are made by our own migration; when the library asks for others, this says which. */
import { pools } from '@garboard/tests/support/database.ts';
import { accountsForTests } from '@garboard/tests/support/people.ts';
import { getMigrations } from 'better-auth/db/migration';
import { describe, expect, it } from 'vitest';
import { optionsOf } from './options.ts';

describe('the schema of the accounts', () => {
  const options = optionsOf(
    accountsForTests().settings,
    async () => {},
    () => {},
  );

  it('is what the library wants', async () => {
    expect(await (await getMigrations(options)).compileMigrations()).toBe(';');
  });

  it('is looked at: another column would be missed', async () => {
    const more = { user: { additionalFields: { shoeSize: { type: 'number' as const, required: false } } } };
    const wanted = await getMigrations({ ...options, ...more });
    expect(await wanted.compileMigrations()).toContain('add column "shoeSize"');
  });

  it('is out of reach of the application, and the application’s tables of the library', async () => {
    await expect(
      pools.app
        .selectFrom('auth.user' as 'vessel')
        .selectAll()
        .execute(),
    ).rejects.toThrow('permission denied');
    await expect(pools.accounts.query('select * from public.membership')).rejects.toThrow('permission denied');
    await expect(pools.accounts.query('select * from belonging')).rejects.toThrow('permission denied');
    await expect(pools.accounts.query('select * from signing_secret')).rejects.toThrow('permission denied');
    await expect(pools.accounts.query(`select erase_person(gen_random_uuid())`)).rejects.toThrow('does not exist');
    await expect(pools.accounts.query(`select public.erase_person(gen_random_uuid())`)).rejects.toThrow('denied');
  });
});
