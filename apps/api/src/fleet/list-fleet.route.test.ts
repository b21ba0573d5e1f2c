import { takeRemedyStep } from '@garboard/actions/finding/take-remedy-step.ts';
import type { Fleet } from '@garboard/contract/fleet/fleet.ts';
import type { Problem } from '@garboard/contract/problem.ts';
import { signedIn } from '@garboard/tests/support/api.ts';
import { aFinding } from '@garboard/tests/support/findings.ts';
import { accepted } from '@garboard/tests/support/organisation.ts';
import { anItem, aVessel, state } from '@garboard/tests/support/vessels.ts';
import { describe, expect, it } from 'vitest';

async function aBoatWithFlares() {
  const owner = await signedIn();
  const ctx = owner.organisation.ctx();
  const { id } = await aVessel(ctx, ['us_recreational'], 'Shearwater');
  const flare = async (label: string, on: string) => {
    const { item } = await anItem(ctx, id, 'hand_flare', label);
    await state(ctx, item.id, { fact: 'printed_expiry', on });
  };
  return { owner, id, flare };
}

describe('GET /v1/fleet', () => {
  it('gives each vessel a row: what is overdue, what comes next, and a mark for each day', async () => {
    const { owner, id, flare } = await aBoatWithFlares();
    await flare('Old', '2026-10-31');
    await flare('Port side', '2027-06-30');
    await flare('Starboard side', '2027-06-30');
    await flare('Far off', '2031-06-30');

    const { body } = await owner.get<Fleet>('/v1/fleet');

    expect(body).toMatchObject({
      organisation: owner.organisation.name,
      asOf: '2026-11-25',
      until: '2027-11-25',
      nextCursor: null,
    });
    const [row] = body.items;
    expect(row).toMatchObject({
      vesselId: id,
      name: 'Shearwater',
      oldestOverdueAfter: '2026-10-31',
      nextOverdueAfter: '2027-06-30',
    });
    const law = row?.marks.map(({ on, mark, standing, things }) => [
      on,
      mark,
      standing,
      [...new Set(things.map(({ label }) => label))].sort(),
    ]);
    expect(law).toEqual([['2027-06-30', 'replace', 'in_date', ['Port side', 'Starboard side']]]);
  });

  it('counts her open findings by urgency, and all that waits besides by its standing; as at a day gone by too', async () => {
    const { owner, id } = await aBoatWithFlares();
    const ctx = owner.organisation.ctx();
    await aFinding(ctx, id, { urgency: 'before_use' }, '2026-11-20');
    await aFinding(ctx, id, { what: 'Strake loose', urgency: 'observe' }, '2026-11-20');
    const { id: findingId, version } = await aFinding(ctx, id, { what: 'Seal worn' }, '2026-11-24');
    const step = { step: 'accepted', reviewOn: '2027-06-01', responsible: 'Ines Vale', reason: 'Cosmetic' } as const;
    accepted(await takeRemedyStep(ctx, { findingId, expectedVersion: version, step, facts: [] }));

    const [row] = (await owner.get<Fleet>('/v1/fleet')).body.items;
    const none = { before_use: 0, within_weeks: 0, this_season: 0, next_lay_up: 0, observe: 0 };
    expect(row?.findings).toEqual({ ...none, before_use: 1, within_weeks: 1, observe: 1 });
    expect(row?.matters).toEqual({ overdue: 1, due: 0, in_date: 1, unknown: 1 });
    const [before] = (await owner.get<Fleet>('/v1/fleet?asOf=2026-11-21')).body.items;
    expect(before?.findings).toEqual({ ...none, before_use: 1, observe: 1 });
  });

  it('marks what runs out on paper apart from what is replaced on the same day', async () => {
    const { owner, id, flare } = await aBoatWithFlares();
    await flare('Flare', '2027-06-30');
    const { item } = await anItem(owner.organisation.ctx(), id, 'insurance_policy', 'Policy');
    await state(owner.organisation.ctx(), item.id, { fact: 'printed_expiry', on: '2027-06-30' });

    const { body } = await owner.get<Fleet>('/v1/fleet');

    const marks = body.items[0]?.marks.map(({ mark, things }) => [mark, things.map(({ label }) => label)]);
    expect(marks?.sort()).toEqual([
      ['document', ['Policy']],
      ['replace', ['Flare']],
    ]);
  });

  it('reaches as far as it is asked to', async () => {
    const { owner, flare } = await aBoatWithFlares();
    await flare('Near', '2027-01-31');
    await flare('Far', '2027-02-28');

    const { body } = await owner.get<Fleet>('/v1/fleet?horizonDays=67');

    expect(body.until).toBe('2027-01-31');
    expect(body.items[0]?.marks.map(({ on }) => on)).toEqual(['2027-01-31']);
  });

  it('shows when she is laid up', async () => {
    const { owner, id } = await aBoatWithFlares();
    const record = (from: string, use: string) =>
      owner.post(`/v1/vessels/${id}/situations`, { from, place: 'ashore', use });
    await record('2024-10-01', 'laid_up');
    await record('2025-04-01', 'in_commission');
    await record('2026-11-02', 'laid_up');
    await record('2027-04-10', 'in_commission');

    const { body } = await owner.get<Fleet>('/v1/fleet');

    expect(body.items[0]?.laidUp).toEqual([{ from: '2026-11-02', to: '2027-04-09' }]);
  });

  it('shows the haul-outs ahead, those that are planned too', async () => {
    const { owner, id } = await aBoatWithFlares();
    const hauled = (on: string, planned: boolean) =>
      owner.post(`/v1/vessels/${id}/events`, { event: 'haul_out', on, planned });
    await hauled('2026-03-01', false);
    await hauled('2027-10-20', true);

    const { body } = await owner.get<Fleet>('/v1/fleet');

    expect(body.items[0]?.haulOuts).toEqual([{ on: '2027-10-20', planned: true }]);
  });

  it('looks at another day from there', async () => {
    const { owner, flare } = await aBoatWithFlares();
    await flare('Flare', '2027-06-30');

    const { body } = await owner.get<Fleet>('/v1/fleet?asOf=2027-07-01');

    expect(body.asOf).toBe('2027-07-01');
    expect(body.items[0]).toMatchObject({ oldestOverdueAfter: '2027-06-30', counts: { overdue: { law: 1 } } });
  });

  it('gives each vessel once, page after page, on the day of the first page', async () => {
    const { owner } = await aBoatWithFlares();
    await aVessel(owner.organisation.ctx(), [], 'Fulmar');

    const { body: first } = await owner.get<Fleet>('/v1/fleet?limit=1');
    const { body: second } = await owner.get<Fleet>(`/v1/fleet?limit=1&cursor=${first.nextCursor}`);

    expect([...first.items, ...second.items].map(({ name }) => name)).toEqual(['Fulmar', 'Shearwater']);
    expect(second.nextCursor).toBeNull();
  });

  it('refuses a horizon that is none', async () => {
    const owner = await signedIn();

    const { body } = await owner.get<Problem>('/v1/fleet?horizonDays=0&standing=due');

    expect(body.errors?.map(({ pointer }) => pointer)).toEqual(['#query/horizonDays', '#query/standing']);
  });
});
