/**
 * The other half of the proof: with each policy opened, in a database of its own, there is a leak. A test that
 * found nothing then would prove nothing while the policies hold.
 */

import { createSignInLink } from '@garboard/actions/organisation/administer.ts';
import { lookAtShared } from '@garboard/actions/share/look-at-shared.ts';
import { makeShareLink } from '@garboard/actions/share/make-share-link.ts';
import { migrate } from '@garboard/db/migrate.ts';
import { openPools, type Pools } from '@garboard/db/pool.ts';
import { inOrganisation, type Scope, wholeFleet } from '@garboard/db/scope.ts';
import { sql } from 'kysely';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { createEmptyDatabase, type TestDatabase } from '../harness/test-database.ts';
import { WITH_CREDENTIALS } from '../support/operations.ts';
import { accepted, NOW } from '../support/organisation.ts';
import { anItem, aVessel, state } from '../support/vessels.ts';
import { aFleet, type Fleet, marksOf, tryEverything } from './two-fleets.ts';

type Policy = { readonly table: string; readonly name: string; readonly using: string; readonly check: string | null };

let database: TestDatabase;
let own: Pools;
let ours: Fleet;
let theirs: Fleet;
let policies: Policy[];

beforeAll(async () => {
  database = await createEmptyDatabase(inject('serverUrl'));
  own = openPools({ url: database.url });
  await migrate(own.owner);
  [ours, theirs] = [await aFleet(own), await aFleet(own)];
  await fill(ours);
  await fill(theirs);
  policies = await readPolicies();
});
afterAll(async () => {
  await own.close();
  await database.drop();
});

/** A row in every table: two vessels with a statement each, everything that the API can write, a link to sign in, and a look at one for outsiders. */
async function fill(fleet: Fleet): Promise<void> {
  const { id, ctx } = fleet.organisation;
  for (const name of ['One', 'Two']) {
    const vessel = await aVessel(ctx(), ['solas'], name);
    const { item } = await anItem(ctx(), vessel.id, 'gas_hose');
    await state(ctx(), item.id, { fact: 'installed', on: '2024-05-10' });
  }
  await tryEverything(own, WITH_CREDENTIALS, fleet, fleet);
  const expiresAt = new Date(NOW.getTime() + 1000);
  const shown = {
    label: 'looked at',
    vesselIds: 'all',
    showsValue: false,
    purpose: 'look',
    findingIds: [],
    expiresAt,
  } as const;
  const { text } = accepted(await makeShareLink(ctx(), shown));
  await lookAtShared({ db: own.app, text: text ?? '', now: NOW, userAgent: null });
  await createSignInLink(own.owner, {
    organisationId: id,
    personId: String(fleet.things.personId),
    now: NOW,
    expiresAt,
  });
}

async function readPolicies(): Promise<Policy[]> {
  const { rows } = await sql<Policy>`
    select c.relname::text as table, p.polname::text as name,
           pg_get_expr(p.polqual, c.oid) as using, pg_get_expr(p.polwithcheck, c.oid) as check
      from pg_policy p join pg_class c on c.oid = p.polrelid
      join pg_attribute a on a.attrelid = c.oid and a.attname = 'organisation_id' order by 1, 2`.execute(own.owner);
  return rows;
}

async function opened<T>({ table, name, using, check }: Policy, look: () => Promise<T>): Promise<T> {
  const alter = (to: string) => sql.raw(`alter policy ${name} on ${table} ${to}`).execute(own.owner);
  await alter(check === null ? 'using (true)' : 'using (true) with check (true)');
  try {
    return await look();
  } finally {
    await alter(check === null ? `using (${using})` : `using (${using}) with check (${check})`);
  }
}

const count = (scope: Scope, table: string, where = sql`true`) =>
  inOrganisation(own.app, scope, async (tx) => {
    const { rows } = await sql<{ n: number }>`select count(*) as n from ${sql.table(table)} where ${where}`.execute(tx);
    return rows[0]?.n ?? 0;
  });
const foreign = (table: string) =>
  count(wholeFleet(ours.organisation.id), table, sql`organisation_id <> ${ours.organisation.id}::uuid`);

/** Puts a row of theirs in again: refused by the policy, or, past it, as a row that is there already. */
async function writeTheirs(table: string): Promise<string> {
  const attempt = sql`insert into ${sql.table(table)} select (json_populate_record(null::${sql.table(table)}, ${await aRowOfTheirs(table)}::json)).*`;
  const refusal = await inOrganisation(own.app, wholeFleet(ours.organisation.id), (tx) => attempt.execute(tx)).catch(
    (fault: Error) => fault,
  );
  return refusal instanceof Error ? refusal.message : 'written';
}

async function aRowOfTheirs(table: string): Promise<string> {
  const { id } = theirs.organisation;
  return inOrganisation(own.owner, wholeFleet(id), async (tx) => {
    const { rows } = await sql<{ row: unknown }>`select row_to_json(t) as row from ${sql.table(table)} t
      where organisation_id = ${id} limit 1`.execute(tx);
    expect(rows, `no row of ${table}: make one in fill()`).toHaveLength(1);
    return JSON.stringify(rows[0]?.row);
  });
}

const ofOrganisation = () => policies.filter(({ name }) => name === 'own_organisation');
const narrowing = () => policies.filter(({ name }) => name !== 'own_organisation');

describe('each policy of an organisation', () => {
  it('is there in numbers', () => {
    expect(ofOrganisation().length).toBeGreaterThan(13);
    expect(narrowing().length).toBeGreaterThan(9);
  });

  it('keeps rows of others from being read, and opened it does not', async () => {
    for (const policy of ofOrganisation()) {
      await aRowOfTheirs(policy.table);
      expect(await foreign(policy.table), policy.table).toBe(0);
      expect(await opened(policy, () => foreign(policy.table)), policy.table).toBeGreaterThan(0);
    }
  });

  it('keeps rows of others from being written, and opened it does not', async () => {
    for (const policy of ofOrganisation()) {
      expect(await writeTheirs(policy.table), policy.table).toContain('violates row-level security policy');
      expect(await opened(policy, () => writeTheirs(policy.table)), policy.table).not.toContain('row-level security');
    }
  });
});

describe('each policy of a scope of some vessels', () => {
  it('keeps vessels out of scope from being read, and opened it does not', async () => {
    const scope = { organisationId: ours.organisation.id, vesselIds: [] };
    for (const policy of narrowing()) {
      const whole = await count(wholeFleet(ours.organisation.id), policy.table);
      expect(await count(scope, policy.table), policy.table).toBe(0);
      expect(whole, policy.table).toBeGreaterThan(0);
      expect(await opened(policy, () => count(scope, policy.table)), policy.table).toBe(whole);
    }
  });
});

describe('the questions of the API, asked of another organisation’s things', () => {
  const reads = WITH_CREDENTIALS.filter(({ method }) => method === 'GET');
  const leaks = async () => {
    const attempts = await tryEverything(own, reads, ours, theirs);
    return attempts.filter(({ text }) => marksOf(theirs).some((mark) => text.includes(mark))).map(({ name }) => name);
  };

  it.each(['vessel', 'item', 'override', 'audit'])('find the leak that opening %s makes', async (table) => {
    const policy = ofOrganisation().find((each) => each.table === table);
    if (!policy) throw new Error(`${table} has no policy`);

    expect(await leaks()).toEqual([]);
    expect(await opened(policy, leaks)).not.toEqual([]);
  });
});
