import type { Problem } from '@garboard/contract/problem.ts';
import type { Reading } from '@garboard/contract/survey-visit/walk.ts';
import { match, pointersOf, signedIn } from '@garboard/tests/support/api.ts';
import { aBoat } from '@garboard/tests/support/visited-boat.ts';
import { describe, expect, it } from 'vitest';

describe('a reading', () => {
  // The gas annex of a small commercial vessel code, based on ISO 10239: a drain of 19 mm or more (see published-limits.ts).
  it('at a survey point of which a publication says something is held against it; the point is offered from then on', async () => {
    const owner = await signedIn();
    const { start, walk } = await aBoat(owner);
    const zones = [{ zone: 'gas_locker', name: 'Gas locker' }];
    await owner.put('/v1/survey-routes/open_boat', { zones }, match(2));
    const visit = await start();
    const measured = (point: string, value: number) =>
      owner.post<Reading>(`/v1/visits/${visit.id}/readings`, { zone: 'gas_locker', point, measure: 'length', value });

    const narrow = (await measured('drain, inside diameter', 12)).body;
    expect(narrow.limit).toMatchObject({ within: false, atLeast: 19, source: { status: 'read' } });
    expect((await measured('drain, inside diameter', 19)).body.limit?.within).toBe(true);
    expect((await measured('lid, overlap', 12)).body.limit).toBeUndefined();
    const [stop] = (await walk(visit.id)).stops;
    expect(stop?.points).toEqual([
      'drain, inside diameter',
      'drain outlet, above the waterline',
      'drain and vent, from openings',
      'lid, overlap',
    ]);
  });

  it('says beside itself whether its instrument was in check that day, and is never nought where nothing was measured', async () => {
    const owner = await signedIn();
    const { start, walk } = await aBoat(owner);
    const instrument = (key: string, nextCheckOn?: string) => ({
      key,
      maker: 'Quillmere',
      model: 'QM-2',
      ...(nextCheckOn && { nextCheckOn }),
    });
    const { id } = await start({
      instruments: [instrument('good', '2027-01-01'), instrument('late', '2026-10-01'), instrument('odd')],
    });
    const take = (more: object) =>
      owner.post<Reading & Problem>(`/v1/visits/${id}/readings`, {
        zone: 'papers',
        point: 'port, frame 4',
        measure: 'moisture',
        ...more,
      });

    await take({ value: 18, instrument: 'good' });
    await take({ value: 19, instrument: 'late' });
    await take({ value: 20, instrument: 'odd' });
    expect((await take({ words: 'wet surface' })).body).not.toHaveProperty('value');
    const wrong = await take({ instrument: 'none', zone: 'sails' });
    expect(pointersOf(wrong)).toEqual(['/zone', '/instrument', '/words']);
    const readings = (await walk(id)).stops[0]?.readings;
    expect(readings?.map(({ value, unit, check }) => [value, unit, check])).toEqual([
      [18, 'scale', 'in_check'],
      [19, 'scale', 'out_of_check'],
      [20, 'scale', 'unknown'],
      [undefined, 'scale', 'unknown'],
    ]);
  });
});
