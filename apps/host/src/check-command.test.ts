import { changeVessel } from '@garboard/actions/vessel/change-vessel.ts';
import { inOrganisation, wholeFleet } from '@garboard/db/scope.ts';
import { pools } from '@garboard/tests/support/database.ts';
import { files } from '@garboard/tests/support/files.ts';
import { mintOrganisation } from '@garboard/tests/support/organisation.ts';
import { aVessel } from '@garboard/tests/support/vessels.ts';
import { describe, expect, it } from 'vitest';
import { check } from './check-command.ts';

async function aFleet() {
  const { id, name, ctx } = await mintOrganisation(pools);
  const vessel = await aVessel(ctx());
  return { id, name, ctx: ctx(), vessel };
}

describe('check', () => {
  it('prints the head of the audit to be kept, and the dates, and is content', async () => {
    const { name } = await aFleet();

    const { ok, line } = await check(pools, files.store, { organisation: name.toUpperCase() });

    expect(ok).toBe(true);
    expect(line).toMatch(
      /^Test Fleet \S+: audit of 2 rows is whole, head 2:[0-9a-f]{64}\n1 vessels, 0 obligations differed, 0 findings differed, 0 day counts differed\n0 files, 0 missing$/,
    );
  });

  it('holds the audit against a head that was kept', async () => {
    const { id, name, ctx, vessel } = await aFleet();
    const kept = /head (\S+)/.exec((await check(pools, files.store, { organisation: name })).line)?.[1] ?? '';
    await changeVessel(ctx, { vesselId: vessel.id, expectedVersion: 1, change: { name: 'Curlew' } });
    expect((await check(pools, files.store, { organisation: name, kept })).ok).toBe(true);

    await inOrganisation(pools.owner, wholeFleet(id), async (tx) => {
      await tx.deleteFrom('audit').where('organisation_id', '=', id).execute();
      await tx
        .updateTable('audit_head')
        .set({ sequence: 0, hash: Buffer.alloc(32) })
        .where('organisation_id', '=', id)
        .execute();
    });

    expect((await check(pools, files.store, { organisation: name })).ok).toBe(true);
    expect(await check(pools, files.store, { organisation: name, kept })).toMatchObject({
      ok: false,
      line: expect.stringContaining('audit row 1 is missing, with all after it'),
    });
  });

  it.each([
    [{ kept: '2:abc', organisation: 'x' }, '--kept must be NUMBER:HASH'],
    [{ kept: `2:${'0'.repeat(64)}` }, '--kept needs --organisation'],
    [{ organisation: 'Nobody’s' }, 'there is no organisation Nobody’s'],
  ])('says what it does not understand: %j', async (options, line) => {
    expect(await check(pools, files.store, options)).toMatchObject({ ok: false, line: expect.stringContaining(line) });
  });
});
