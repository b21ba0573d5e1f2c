import { inOrganisation, type Scoped } from '@garboard/db/scope.ts';
import { lockFleet } from '@garboard/db/vessel/vessels.ts';
import { pools } from '@garboard/tests/support/database.ts';
import { mintOrganisation, particulars } from '@garboard/tests/support/organisation.ts';
import { sql } from 'kysely';
import { describe, expect, it } from 'vitest';
import { createVessel } from '../vessel/create-vessel.ts';

describe('entering a vessel', () => {
  it('waits for whoever holds the fleet, so that no notice misses her', async () => {
    const ctx = (await mintOrganisation(pools)).ctx();
    const first = await inOrganisation(pools.app, ctx, async (tx) => {
      await lockFleet(tx, ctx.organisationId);
      const created = createVessel(ctx, particulars('New')).then(() => 'created');
      return { created, came: await Promise.race([created, someoneWaits(tx)]) };
    });
    expect(first.came).toBe('waits');
    expect(await first.created).toBe('created');
  });
});

/** Asked of the server until somebody waits for the lock that this transaction holds. */
async function someoneWaits(tx: Scoped): Promise<string> {
  for (;;) {
    const { rows } = await sql`
      select from pg_locks held join pg_locks asked using (locktype, database, classid, objid, objsubid)
      where locktype = 'advisory' and held.pid = pg_backend_pid() and held.granted and not asked.granted`.execute(tx);
    if (rows.length > 0) return 'waits';
  }
}
