/** The scope of an organisation, as the database enforces it on statements that do not name it. */
import { randomUUID } from 'node:crypto';
import { insertSignInLink } from '@garboard/db/organisation/credentials.ts';
import { mintToken } from '@garboard/db/organisation/token.ts';
import { inOrganisation, wholeFleet } from '@garboard/db/scope.ts';
import { sql } from 'kysely';
import { describe, expect, it } from 'vitest';
import { pools } from '../support/database.ts';
import { mintOrganisation, NOW } from '../support/organisation.ts';

const PLANTED = randomUUID();
const linkOf = (organisationId: string) => ({
  token: mintToken('sign_in_link', organisationId, randomUUID()),
  personId: PLANTED,
  now: NOW,
  expiresAt: new Date(NOW.getTime() + 1000),
});

describe('the scope', () => {
  it('missing is an error, never all rows', async () => {
    await expect(sql`select * from vessel`.execute(pools.app)).rejects.toThrow(/app.organisation|invalid input syntax/);
  });

  it('empty is an error, never all rows', async () => {
    await expect(
      inOrganisation(pools.app, wholeFleet(''), (tx) => sql`select * from vessel`.execute(tx)),
    ).rejects.toThrow('uuid');
  });

  it('ends with its transaction', async () => {
    const { id } = await mintOrganisation(pools);

    await pools.app.connection().execute(async (connection) => {
      await inOrganisation(connection, wholeFleet(id), (tx) => sql`select * from vessel`.execute(tx));
      await expect(sql`select * from vessel`.execute(connection)).rejects.toThrow('uuid');
    });
  });

  it('shows the rows of its own organisation and no others', async () => {
    const [ours, theirs] = [await mintOrganisation(pools), await mintOrganisation(pools)];
    await inOrganisation(pools.app, wholeFleet(theirs.id), (tx) => insertSignInLink(tx, linkOf(theirs.id)));
    const linksOf = (id: string) =>
      inOrganisation(pools.app, wholeFleet(id), (tx) => tx.selectFrom('sign_in_link').select('person_id').execute());

    expect(await linksOf(theirs.id)).toEqual([{ person_id: PLANTED }]);
    expect(await linksOf(ours.id)).toEqual([]);
  });

  it("takes no row of another organisation's", async () => {
    const [ours, theirs] = [await mintOrganisation(pools), await mintOrganisation(pools)];
    const attempt = inOrganisation(pools.app, wholeFleet(ours.id), (tx) => insertSignInLink(tx, linkOf(theirs.id)));

    await expect(attempt).rejects.toThrow('violates row-level security policy');
  });
});
