import type { FleetSampleList } from '@garboard/contract/due-list/fleet-sample.ts';
import type { Problem } from '@garboard/contract/problem.ts';
import { signedIn } from '@garboard/tests/support/api.ts';
import { anItem, aVessel, state } from '@garboard/tests/support/vessels.ts';
import { describe, expect, it } from 'vitest';

async function aShip() {
  const owner = await signedIn();
  const ctx = owner.organisation.ctx();
  const { id } = await aVessel(ctx, ['solas'], 'Whimbrel');
  const powder = async (label: string, made: string | null, vesselId = id) => {
    const { item } = await anItem(ctx, vesselId, 'portable_extinguisher_dry_powder', label);
    if (made) await state(ctx, item.id, { fact: 'manufactured', on: made });
    return item.id;
  };
  return { owner, ctx, id, powder };
}

describe('GET /v1/fleet-samples', () => {
  it('asks for one of each type and year aboard, five years after the last, and moves when one is discharged', async () => {
    const { owner, ctx, id, powder } = await aShip();
    const galley = await powder('Galley', '2021-03');
    const engine = await powder('Engine space', '2021-09');
    await powder('Saloon', '2023');
    const ask = async (query = '') => {
      const { body } = await owner.get<FleetSampleList>(`/v1/fleet-samples${query}`);
      return body.items.map(({ madeIn, howMany, by, standing, among }) => [
        madeIn,
        howMany,
        by,
        standing,
        among.map(({ label }) => label),
      ]);
    };

    expect(await ask()).toEqual([
      ['2021', 1, '2026-03-01', 'overdue', ['Galley', 'Engine space']],
      ['2023', 1, '2028-01-01', 'in_date', ['Saloon']],
    ]);
    await state(ctx, engine, { fact: 'tested', test: 'discharge', on: '2026-10-01' });
    expect((await ask())[0]).toEqual(['2023', 1, '2028-01-01', 'in_date', ['Saloon']]);
    expect((await ask())[1]).toEqual(['2021', 1, '2031-10-01', 'in_date', ['Galley', 'Engine space']]);
    expect((await ask('?asOf=2026-09-30'))[0]?.slice(0, 4)).toEqual(['2021', 1, '2026-03-01', 'overdue']);
    const { body } = await owner.get<FleetSampleList>('/v1/fleet-samples');
    expect(body.items[1]).toMatchObject({ vessel: { id }, ruleId: 'fe-imo', among: [{ itemId: galley }, {}] });
  });

  it('counts each ship by herself, only those under SOLAS, and nothing that was withdrawn', async () => {
    const { owner, ctx, powder } = await aShip();
    const other = await aVessel(ctx, ['solas'], 'Dunlin');
    const inland = await aVessel(ctx, ['uk_inland'], 'Coot');
    const gone = await powder('Old', '2019');
    await state(ctx, gone, { fact: 'withdrawn', on: '2026-01-10' });
    await powder('Galley', '2023', other.id);
    await powder('Saloon', '2023');
    await powder('Cabin', '2023', inland.id);

    const { body } = await owner.get<FleetSampleList>('/v1/fleet-samples');

    expect(body.items.map(({ vessel, madeIn }) => [vessel.name, madeIn]).sort()).toEqual([
      ['Dunlin', '2023'],
      ['Whimbrel', '2023'],
    ]);
  });

  it('tells apart what was made nobody knows when', async () => {
    const { owner, powder } = await aShip();
    await powder('Galley', null);

    const { body } = await owner.get<FleetSampleList>('/v1/fleet-samples');

    expect(body.items).toEqual([]);
    expect(body.unknown.map(({ vessel, thing }) => [vessel.name, thing.label])).toEqual([['Whimbrel', 'Galley']]);
  });

  it('refuses a day that is none', async () => {
    const owner = await signedIn();

    const { status, body } = await owner.get<Problem>('/v1/fleet-samples?asOf=soon');

    expect([status, body.errors?.map(({ pointer }) => pointer)]).toEqual([422, ['#query/asOf']]);
  });
});
