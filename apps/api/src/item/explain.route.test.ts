import type { Explained } from '@garboard/contract/item/explain.ts';
import type { Problem } from '@garboard/contract/problem.ts';
import type { VesselPage } from '@garboard/contract/vessel/vessel.ts';
import { signedIn } from '@garboard/tests/support/api.ts';
import { pools } from '@garboard/tests/support/database.ts';
import { mintOrganisation } from '@garboard/tests/support/organisation.ts';
import { describe, expect, it } from 'vitest';

const PATH = '/v1/due-dates/explain';
const SERVICED = { id: 'last', fact: 'serviced', on: '2025-11-04', doneBy: { capacity: 'liferaft_service_station' } };
const RAFT = { kind: 'liferaft', schemes: ['solas'], facts: [SERVICED], asOf: '2026-11-25' };

const service = ({ items }: Explained) => items.find(({ ruleId }) => ruleId === 'raft-solas');

describe('POST /v1/due-dates/explain', () => {
  it('works due dates out from facts that are nowhere stored', async () => {
    const viewer = await signedIn('viewer');

    const { status, body } = await viewer.post<Explained>(PATH, RAFT);

    expect(status).toBe(200);
    expect(body.asOf).toBe('2026-11-25');
    expect(service(body)).toMatchObject({ dueOn: '2026-11-04', latestPermittedOn: '2027-04-04', standing: 'overdue' });
    expect(service(body)?.explanation.binds?.factIds).toEqual(['last']);
    expect((await viewer.get<VesselPage>('/v1/vessels')).body.items).toEqual([]);
  });

  it('counts neither what was struck out, nor what came after the day, nor what was learned too late', async () => {
    const viewer = await signedIn('viewer');
    const later = { ...SERVICED, id: 'later', on: '2026-06-01' };
    const ask = async (facts: readonly object[], more = {}) =>
      service((await viewer.post<Explained>(PATH, { ...RAFT, ...more, facts })).body)?.dueOn;

    expect(await ask([SERVICED, later])).toBe('2027-06-01');
    expect(await ask([SERVICED, later], { asOf: '2026-05-31' })).toBe('2026-11-04');
    expect(await ask([SERVICED, { ...later, corrects: 'last', on: '2024-06-01' }])).toBe('2025-06-01');
    expect(
      await ask([SERVICED, { ...later, recordedAt: '2026-07-01T00:00:00Z' }], { knownAt: '2026-06-30T00:00:00Z' }),
    ).toBe('2026-11-04');
  });

  it('takes events and attributes into account', async () => {
    const viewer = await signedIn('viewer');

    const { body } = await viewer.post<Explained>(PATH, {
      kind: 'hand_flare',
      schemes: ['us_sailing_school'],
      facts: [{ fact: 'printed_expiry', on: '2026-05-31' }],
      events: [{ event: 'inspection', on: '2026-08-20', planned: true }],
      asOf: '2026-05-01',
    });

    expect(body.items).toContainEqual(expect.objectContaining({ expiresOn: '2026-05-31', replaceBy: '2026-08-20' }));
  });

  it('says on the day asked that a duty is suspended while she is laid up, and since when', async () => {
    const viewer = await signedIn('viewer');
    const laidUp = { place: 'ashore', use: 'laid_up', dismantled: true };
    const afloat = { from: '2026-06-20', place: 'afloat', use: 'in_commission' };
    const ask = async (asOf: string, situations: readonly object[]) => {
      const { body } = await viewer.post<Explained>(PATH, {
        kind: 'portable_extinguisher_foam',
        schemes: ['us_sailing_school'],
        facts: [{ fact: 'serviced', on: '2025-06-01', doneBy: { capacity: 'fire_equipment_technician' } }],
        situations,
        asOf,
      });
      return body.items.find(({ ruleId }) => ruleId === 'fe-us-school');
    };

    const suspended = await ask('2026-06-10', [{ ...laidUp, from: '2025-11-02' }, afloat]);
    expect(suspended).toMatchObject({ dueOn: '2026-06-01', standing: 'due', suspendedFrom: '2025-11-02' });
    expect(suspended?.explanation.sentence).toContain('it must be done before she returns to service');
    expect(suspended).toHaveProperty('suspendedUntil', '2026-06-19');
    expect(await ask('2026-06-10', [{ ...laidUp, from: '2025-11-02' }])).not.toHaveProperty('suspendedUntil');
    const back = await ask('2026-07-01', [{ ...laidUp, from: '2025-11-02' }, afloat]);
    expect(back).toMatchObject({ dueOn: '2026-06-01', standing: 'overdue' });
    expect(back).not.toHaveProperty('suspendedFrom');
  });

  it('takes the day that a surveyor set with a survey that did not pass, and no other', async () => {
    const viewer = await signedIn('viewer');
    const survey = { fact: 'inspected', test: 'annual_survey', on: '2026-05-25', doneBy: { capacity: 'surveyor' } };
    const ask = (more: object) =>
      viewer.post<Explained & Problem>(PATH, {
        kind: 'workboat_certificate',
        schemes: ['uk_workboat'],
        facts: [{ ...survey, until: '2026-08-31', ...more }],
        asOf: '2026-06-01',
      });

    const { body } = await ask({ outcome: 'failed' });
    expect(body.items).toContainEqual(expect.objectContaining({ ruleId: 'deficient', dueOn: '2026-08-31' }));
    const { status, body: refused } = await ask({ outcome: 'passed' });
    expect([status, refused.errors?.map(({ pointer }) => pointer)]).toEqual([422, ['/facts/0/until']]);
  });

  it('takes today from the vessel’s place, or else from the organisation’s', async () => {
    const viewer = await signedIn('viewer', await mintOrganisation(pools, 'Pacific/Kiritimati'));
    const { asOf, ...undated } = RAFT;

    const home = await viewer.post<Explained>(PATH, undated);
    const away = await viewer.post<Explained>(PATH, { ...undated, vessel: { timeZone: 'UTC' } });

    expect([home.body.asOf, away.body.asOf]).toEqual(['2026-11-26', '2026-11-25']);
  });

  it('names every fault at once', async () => {
    const viewer = await signedIn('viewer');

    const { status, body } = await viewer.post<Problem>(PATH, {
      kind: 'Liferaft!',
      schemes: ['navy'],
      facts: [{ fact: 'serviced', on: '2026-02-30' }, { fact: 'mended' }],
      events: [{ event: 'inspection', on: 'soon' }],
      asOf: '1066-10-14',
      owner: 'me',
    });

    expect(status).toBe(422);
    expect(body.errors?.map(({ pointer }) => pointer).sort()).toEqual([
      '/asOf',
      '/events/0/on',
      '/facts/0/on',
      '/facts/1/fact',
      '/facts/1/on',
      '/kind',
      '/owner',
      '/schemes/0',
    ]);
  });

  it('names what no schema sees: an unknown kind, a name used twice, a correction of nothing', async () => {
    const viewer = await signedIn('viewer');

    const { body } = await viewer.post<Problem>(PATH, {
      ...RAFT,
      kind: 'sea_anchor',
      facts: [SERVICED, { ...SERVICED, corrects: 'nothing' }],
    });

    expect(body.errors?.map(({ pointer }) => pointer)).toEqual(['/kind', '/facts/1/id', '/facts/1/corrects']);
  });

  it.each([
    ['absurd', { on: '0001' }, '/facts/1/on'],
    ['before manufacture', { on: '2018-05-01' }, '/facts/1/on'],
    ['after the day asked and after today', { on: '2026-11-26' }, '/facts/1/on'],
    ['read where nothing has a meter', { reading: { value: 7, unit: 'hours' } }, '/facts/1/reading'],
  ])('names a fact that cannot be true: %s', async (_, wrong, pointer) => {
    const viewer = await signedIn('viewer');

    const { status, body } = await viewer.post<Problem>(PATH, {
      ...RAFT,
      facts: [
        { fact: 'manufactured', on: '2019-04' },
        { ...SERVICED, ...wrong },
      ],
    });

    expect(status).toBe(422);
    expect(body.errors?.map((fault) => fault.pointer)).toEqual([pointer]);
  });

  it('shows the doubt about a fact that only looks odd', async () => {
    const viewer = await signedIn('viewer');

    const { body } = await viewer.post<Explained>(PATH, { ...RAFT, facts: [SERVICED, { ...SERVICED, id: 'again' }] });

    expect(body.doubts).toEqual([{ pointer: '/facts/1', detail: 'The same is on record already.' }]);
  });

  it('takes own figures, as they are kept for a vessel, and says which it was worked out with', async () => {
    const viewer = await signedIn('viewer');
    const hose = { kind: 'gas_hose', facts: [{ fact: 'installed', on: '2024-02-01' }], asOf: '2026-11-25' };
    const figure = {
      id: 'data-sheet',
      ruleId: 'lpg-hose',
      duty: 'replacement',
      period: 'P4Y',
      weight: 'maker',
      decidedBy: 'Anna Berg',
      reason: 'Its maker says so.',
      document: 'Data sheet H-88',
      from: '2026-03-01',
    };
    const ask = async (more: object) => {
      const { body } = await viewer.post<Explained>(PATH, { ...hose, overrides: [{ ...figure, ...more }] });
      return body.items.find(({ ruleId }) => ruleId === 'lpg-hose');
    };

    const own = await ask({});
    expect(own).toMatchObject({ dueOn: '2028-02-01', weight: 'maker', explanation: { overrideId: 'data-sheet' } });
    expect((await ask({ from: '2026-11-26' }))?.dueOn).toBe('2029-02-01');
    expect((await ask({ ended: { on: '2026-06-01' } }))?.dueOn).toBe('2029-02-01');
  });

  it('refuses an own figure that could not be kept: loosening what binds, a duty that is none', async () => {
    const viewer = await signedIn('viewer');
    const figure = { weight: 'own', decidedBy: 'A', reason: 'B', document: 'C', from: '2026-03-01' };

    const { status, body } = await viewer.post<Problem>(PATH, {
      ...RAFT,
      overrides: [
        { ...figure, ruleId: 'raft-solas', duty: 'service', period: 'P2Y' },
        { ...figure, ruleId: 'raft-solas', duty: 'polish', period: 'P1Y' },
        { ...figure, ruleId: 'lpg-hose', duty: 'replacement', period: 'P1Y' },
      ],
    });

    expect(status).toBe(422);
    expect(body.errors?.map(({ pointer }) => pointer)).toEqual([
      '/overrides/0/period',
      '/overrides/1/duty',
      '/overrides/2/ruleId',
    ]);
  });

  it('refuses an attribute of another type, and doubts one that no rule for the kind reads', async () => {
    const viewer = await signedIn('viewer');
    const attributes = { seasonMonths: '6', cylinderTestValidTo: 'soon', standard: 'best', extendedInterval: 'no' };

    const { status, body } = await viewer.post<Problem>(PATH, { ...RAFT, attributes });
    const { body: odd } = await viewer.post<Explained>(PATH, { ...RAFT, attributes: { seasonmonths: 6 } });

    expect([status, body.errors?.map(({ pointer }) => pointer)]).toEqual([
      422,
      Object.keys(attributes).map((name) => `/attributes/${name}`),
    ]);
    expect(odd.doubts).toEqual([{ pointer: '/attributes', detail: 'No rule for this kind reads seasonmonths.' }]);
  });

  it('says how to ask about a day that is still ahead', async () => {
    const viewer = await signedIn('viewer');
    const ahead = { ...RAFT, facts: [{ ...SERVICED, on: '2027-03-10' }] };

    const { body: refused } = await viewer.post<Problem>(PATH, ahead);
    const { body } = await viewer.post<Explained>(PATH, { ...ahead, asOf: '2027-03-10' });

    expect(refused.errors?.[0]?.detail).toContain('give it as `asOf`');
    expect(service(body)?.dueOn).toBe('2028-03-10');
  });

  it('places a plate whose day of reading nobody gave, in whatever order the facts are stated', async () => {
    const viewer = await signedIn('viewer');
    const facts = [
      { fact: 'manufactured', on: '2023-10' },
      { fact: 'installed', on: '2015-01-01' },
      { fact: 'manufactured', on: '2014-10' },
      { fact: 'replaced', on: '2024-03-10', doneBy: { capacity: 'gas_engineer' } },
    ];
    const ask = async (stated: readonly object[]) => {
      const { body } = await viewer.post<Explained>(PATH, { kind: 'gas_hose', facts: stated, asOf: '2026-11-25' });
      return body.items.find(({ ruleId }) => ruleId === 'lpg-hose')?.dueOn;
    };

    expect(await ask(facts)).toBe('2028-10-31');
    expect(await ask(facts.toReversed())).toBe('2028-10-31');
  });
});
