/** The audit's chain against somebody with the whole database in hand, and against many writers at once. */
import { randomUUID } from 'node:crypto';
import { changeVessel } from '@garboard/actions/vessel/change-vessel.ts';
import { createVessel } from '@garboard/actions/vessel/create-vessel.ts';
import { noteAudit } from '@garboard/db/audit/append-audit.ts';
import type { AuditRow } from '@garboard/db/audit/audit-row.ts';
import { chain, type Head, NO_HASH } from '@garboard/db/audit/chain.ts';
import { checkChain } from '@garboard/db/audit/check-chain.ts';
import { loadChained } from '@garboard/db/audit/read-chain.ts';
import { inOrganisation, inSnapshot, wholeFleet } from '@garboard/db/scope.ts';
import { type RawBuilder, sql } from 'kysely';
import { describe, expect, it } from 'vitest';
import { pools } from './support/database.ts';
import { mintOrganisation, NOW, particulars } from './support/organisation.ts';
import { aVessel } from './support/vessels.ts';

const check = (id: string, kept?: Head) => inSnapshot(pools.app, wholeFleet(id), (tx) => checkChain(tx, id, kept));

const aRow = (): AuditRow => ({
  ...{ id: randomUUID(), at: NOW, actor: 'x:x', credential: 'x:x', role: 'owner', requestId: 'x' },
  ...{ verb: 'change_vessel', subject: 'vessel', subjectId: randomUUID(), before: null, after: null },
});

/** Six rows: the organisation's own, and five of a vessel that was put on the register and renamed. */
async function sixRows() {
  const organisation = await mintOrganisation(pools);
  const ctx = organisation.ctx();
  const vessel = await aVessel(ctx);
  for (const version of [1, 2, 3, 4])
    await changeVessel(ctx, { vesselId: vessel.id, expectedVersion: version, change: { name: `Name ${version}` } });
  const tamper = (statement: RawBuilder<unknown>) =>
    inOrganisation(pools.owner, wholeFleet(organisation.id), (tx) => statement.execute(tx));
  return { ...organisation, ctx, vessel, tamper };
}

describe('the chain of an organisation', () => {
  it('holds after ordinary work, and names its head', async () => {
    const { id } = await sixRows();

    expect(await check(id)).toEqual({
      rows: 6,
      beforeChain: 0,
      head: { sequence: 6, hash: expect.stringMatching(/^[0-9a-f]{64}$/) },
      broken: null,
    });
  });

  it.each<[string, (id: string) => RawBuilder<unknown>, object]>([
    [
      'a value that was changed',
      (id) =>
        sql`update audit set after = jsonb_set(after, '{name}', '"Other"') where organisation_id = ${id} and sequence = 3`,
      { at: 3, what: 'changed' },
    ],
    [
      'a name put in another’s place',
      (id) =>
        sql`update audit set actor = 'api_key:0198c5a2-7b1e-7c3d-9a41-5f2e8d7c6b5a' where organisation_id = ${id} and sequence = 2`,
      { at: 2, what: 'changed' },
    ],
    [
      'a row that was taken out',
      (id) => sql`delete from audit where organisation_id = ${id} and sequence = 4`,
      { at: 4, what: 'missing' },
    ],
    [
      'a last row that was taken out',
      (id) => sql`delete from audit where organisation_id = ${id} and sequence = 6`,
      { at: 6, what: 'cut_off' },
    ],
    [
      'rows that were moved out of their places',
      (id) => sql`with moved as (
          update audit set sequence = -sequence where organisation_id = ${id} and sequence in (3, 4) returning 1)
        select count(*) from moved`,
      { at: 3, what: 'missing' },
    ],
    [
      'the contents of two rows that changed places',
      (id) => sql`update audit a set before = b.before, after = b.after from audit b
        where a.organisation_id = ${id} and b.organisation_id = a.organisation_id
          and (a.sequence, b.sequence) in ((3, 4), (4, 3))`,
      { at: 3, what: 'changed' },
    ],
    [
      'a row added behind the head',
      (
        id,
      ) => sql`insert into audit select organisation_id, gen_random_uuid(), at, actor, request_id, verb, subject, subject_id, before, after,
          7, hash, hash, credential, role from audit where organisation_id = ${id} and sequence = 6`,
      { at: 7, what: 'changed' },
    ],
    [
      'a head that was moved back',
      (id) => sql`update audit_head set sequence = 5, hash = (
          select hash from audit where organisation_id = ${id} and sequence = 5) where organisation_id = ${id}`,
      { at: 6, what: 'not_counted' },
    ],
    [
      'a link that points elsewhere',
      (id) => sql`update audit set previous = decode(${NO_HASH}, 'hex') where organisation_id = ${id} and sequence = 5`,
      { at: 5, what: 'not_linked' },
    ],
  ])('shows %s', async (_, statement, broken) => {
    const { id, tamper } = await sixRows();

    await tamper(statement(id));

    expect((await check(id)).broken).toEqual(broken);
  });

  it('shows a row added well-made at the end but not at the head', async () => {
    const { id, tamper } = await sixRows();
    const [last] = (await inSnapshot(pools.app, wholeFleet(id), (tx) => loadChained(tx, id, 5, 1))) ?? [];
    if (!last) throw new Error('no last row');
    const { at, hash, ...rest } = last;
    const [forged] = chain(id, { sequence: 6, hash }, [
      { ...rest, at: new Date(at), id: randomUUID(), subject: 'vessel' },
    ]);
    await tamper(sql`insert into audit select organisation_id, ${forged?.id}::uuid, at, actor, request_id, verb, subject, subject_id, before, after,
      7, decode(${forged?.previous}, 'hex'), decode(${forged?.hash}, 'hex'), credential, role from audit where organisation_id = ${id} and sequence = 6`);

    expect((await check(id)).broken).toEqual({ at: 7, what: 'not_counted' });
  });

  it('shows a tail that was written anew with its head only to who kept the head elsewhere', async () => {
    const { id, ctx, vessel, tamper } = await sixRows();
    const kept = (await check(id)).head;
    await tamper(sql`delete from audit where organisation_id = ${id} and sequence = 6`);
    await tamper(sql`update audit_head set sequence = 5, hash = (
      select hash from audit where organisation_id = ${id} and sequence = 5) where organisation_id = ${id}`);

    expect((await check(id)).broken).toBeNull();
    expect((await check(id, kept)).broken).toEqual({ at: 6, what: 'cut_off' });
    await changeVessel(ctx, { vesselId: vessel.id, expectedVersion: 5, change: { name: 'Anew' } });
    expect((await check(id)).broken).toBeNull();
    expect((await check(id, kept)).broken).toEqual({ at: 6, what: 'not_as_kept' });
    expect((await check(id, (await check(id)).head)).broken).toBeNull();
  });

  it('takes no row without its place', async () => {
    const { id, tamper } = await sixRows();
    const bare = sql`insert into audit (organisation_id, id, at, actor, request_id, verb, subject, subject_id)
      values (${id}, gen_random_uuid(), now(), 'x', 'x', 'x', 'x', gen_random_uuid())`;

    await expect(tamper(bare)).rejects.toThrow('audit_is_chained');
  });
});

describe('many writers at once', () => {
  it('leave a chain without gaps, each row once', async () => {
    const organisation = await mintOrganisation(pools);
    const names = Array.from({ length: 40 }, (_, at) => `Vessel ${at}`);

    const answers = await Promise.all(names.map((name) => createVessel(organisation.ctx(), particulars(name))));

    expect(answers.every(({ ok }) => ok)).toBe(true);
    expect(await check(organisation.id)).toMatchObject({ rows: 41, broken: null });
  });

  it('of two organisations do not wait for each other', async () => {
    const [ours, theirs] = [await mintOrganisation(pools), await mintOrganisation(pools)];

    await inOrganisation(pools.app, wholeFleet(ours.id), async (tx) => {
      await sql`select from audit_head where organisation_id = ${ours.id} for update`.execute(tx);
      expect((await createVessel(theirs.ctx(), particulars())).ok).toBe(true);
    });
  });

  it('of one organisation work side by side until their last statements', async () => {
    const organisation = await mintOrganisation(pools);

    await inOrganisation(pools.app, wholeFleet(organisation.id), async (tx) => {
      noteAudit(tx, organisation.id, aRow());
      expect((await createVessel(organisation.ctx(), particulars('Other'))).ok).toBe(true);
    });

    expect(await check(organisation.id)).toMatchObject({ rows: 3, broken: null });
  });
});

describe('a change', () => {
  it('does not commit where its row cannot be written', async () => {
    const organisation = await mintOrganisation(pools);
    const ctx = organisation.ctx();

    const attempt = inOrganisation(pools.app, ctx, async (tx) => {
      await sql`update audit_head set sequence = sequence - 1`.execute(tx);
      noteAudit(tx, organisation.id, aRow());
    });

    await expect(attempt).rejects.toThrow('audit_in_sequence');
    expect(await check(organisation.id)).toMatchObject({ rows: 1, broken: null });
  });

  it('cannot be noted where nobody would write it', async () => {
    const { id } = await mintOrganisation(pools);
    const attempt = pools.app.transaction().execute(async (tx) => noteAudit(tx, id, aRow()));

    await expect(attempt).rejects.toThrow('outside a transaction in a scope');
  });
});
