import { createHash } from 'node:crypto';
import { inOrganisation, wholeFleet } from '@garboard/db/scope.ts';
import { listVessels } from '@garboard/db/vessel/vessels.ts';
import { pools } from '@garboard/tests/support/database.ts';
import { mintOrganisation, particulars } from '@garboard/tests/support/organisation.ts';
import { describe, expect, it } from 'vitest';
import type { ActionContext } from './context.ts';
import { createVessel } from './vessel/create-vessel.ts';

const fingerprint = (text: string) => createHash('sha256').update(text).digest();
const names = (organisationId: string) =>
  inOrganisation(pools.app, wholeFleet(organisationId), async (tx) =>
    (await listVessels(tx, 100)).rows.map(({ name }) => name),
  );
const auditRows = (organisationId: string) =>
  inOrganisation(pools.app, wholeFleet(organisationId), (tx) =>
    tx.selectFrom('audit').select(['verb', 'actor', 'request_id']).orderBy('id').execute(),
  );

async function withKey(key: string) {
  const organisation = await mintOrganisation(pools);
  const ctx: ActionContext = { ...organisation.ctx(), once: { key, fingerprint: fingerprint('a') } };
  return { organisation, ctx };
}

describe('a write with an idempotency key', () => {
  it('has one effect however often it is repeated, and gives every repeat the first answer', async () => {
    const { organisation, ctx } = await withKey('k1');
    const first = await createVessel(ctx, particulars('Once'));
    const second = await createVessel(ctx, particulars('Once'));

    expect(second).toEqual({ ...first, replayed: true });
    expect(await names(organisation.id)).toEqual(['Once']);
  });

  it('has one effect when five come at the same time', async () => {
    const { organisation, ctx } = await withKey('k2');
    const results = await Promise.all(Array.from({ length: 5 }, () => createVessel(ctx, particulars('Once'))));

    expect(results.filter((result) => result.ok && !result.replayed)).toHaveLength(1);
    expect(new Set(results.map((result) => result.ok && result.value.id)).size).toBe(1);
    expect(await names(organisation.id)).toEqual(['Once']);
  });

  it('refuses the same key for another request', async () => {
    const { organisation, ctx } = await withKey('k3');
    await createVessel(ctx, particulars('Once'));
    const other = await createVessel(
      { ...ctx, once: { key: 'k3', fingerprint: fingerprint('b') } },
      particulars('Twice'),
    );

    expect(other).toEqual({ ok: false, failure: { kind: 'key_reused' } });
    expect(await names(organisation.id)).toEqual(['Once']);
  });

  it('leaves the key free when the request was refused', async () => {
    const { ctx } = await withKey('k4');
    expect((await createVessel(ctx, { ...particulars(), timeZone: 'Nowhere/Land' })).ok).toBe(false);
    expect((await createVessel(ctx, particulars())).ok).toBe(true);
  });

  it('keeps the keys of two callers apart', async () => {
    const { organisation, ctx } = await withKey('k5');
    await createVessel(ctx, particulars('Mine'));
    const other = { ...organisation.ctx(), once: { key: 'k5', fingerprint: fingerprint('b') } };
    expect((await createVessel(other, particulars('Theirs'))).ok).toBe(true);
  });
});

describe('every write', () => {
  it('leaves exactly one line in the audit, with who and which request', async () => {
    const organisation = await mintOrganisation(pools);
    const ctx = organisation.ctx();
    await createVessel(ctx, particulars());

    expect(await auditRows(organisation.id)).toEqual([
      { verb: 'create_organisation', actor: expect.stringContaining('upkeep:'), request_id: 'administration' },
      { verb: 'create_vessel', actor: `person:${ctx.actor.id}`, request_id: ctx.requestId },
    ]);
  });

  it('leaves no trace when it is refused', async () => {
    const organisation = await mintOrganisation(pools);
    const refusal = await createVessel(organisation.ctx(), {
      ...particulars(),
      timeZone: 'Nowhere/Land',
      builtYear: 2999,
    });

    expect(refusal).toMatchObject({ failure: { errors: [{ pointer: '/timeZone' }, { pointer: '/builtYear' }] } });
    expect(await names(organisation.id)).toEqual([]);
    expect(await auditRows(organisation.id)).toHaveLength(1);
  });
});
