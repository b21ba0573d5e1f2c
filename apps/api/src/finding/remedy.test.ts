import type { Finding, FindingPage } from '@garboard/contract/finding/finding.ts';
import type { ObligationList } from '@garboard/contract/item/obligation.ts';
import type { Problem } from '@garboard/contract/problem.ts';
import { match, pointersOf, signedIn, signedInPerson } from '@garboard/tests/support/api.ts';
import { aBoat, DRAIN, HOSE } from '@garboard/tests/support/boat-with-findings.ts';
import { TODAY } from '@garboard/tests/support/organisation.ts';
import { anItem, aVessel, state } from '@garboard/tests/support/vessels.ts';
import { describe, expect, it } from 'vitest';

const evidence = [{ kind: 'looked', words: 'New hose, dated 2026' }];

describe('a remedy', () => {
  it('is reported by the yard, which moves the dates of what was fitted, and verified by somebody else', async () => {
    const owner = await signedInPerson({ role: 'owner' });
    const yard = await signedInPerson({ role: 'yard' }, owner.organisation);
    const { vessel, enter } = await aBoat(owner);
    const { item } = await anItem(owner.organisation.ctx(), vessel.id, 'gas_hose');
    await state(owner.organisation.ctx(), item.id, { fact: 'manufactured', on: '2015-05', readOn: '2024-01-10' });
    const { id } = await enter({ ...HOSE, itemId: item.id });
    const dueOf = async () =>
      (await owner.get<ObligationList>(`/v1/items/${item.id}/obligations`)).body.items.map(({ standing }) => standing);
    expect(await dueOf()).toContain('overdue');

    const reported = await yard.post<Finding>(
      `/v1/findings/${id}/remedy`,
      {
        step: 'report_done',
        work: 'Hose replaced, joint tested',
        doneOn: TODAY,
        doneBy: { name: 'Ines Vale', capacity: 'gas_engineer', certificate: 'G-2041' },
        facts: [
          { itemId: item.id, fact: { fact: 'replaced', on: TODAY, outcome: 'passed', evidence: 'record' } },
          { itemId: item.id, fact: { fact: 'manufactured', on: '2026-06', outcome: 'passed', evidence: 'printed' } },
        ],
      },
      match(1),
    );
    expect(reported.status, reported.text).toBe(200);
    expect(reported.body.reads).toBe(`Reported done on ${TODAY}; nobody else has looked yet`);
    expect(await dueOf()).not.toContain('overdue');
    expect((await yard.post(`/v1/findings/${id}/verification`, { right: true, evidence }, match(2))).status).toBe(403);

    const { body } = await owner.post<Finding>(`/v1/findings/${id}/verification`, { right: true, evidence }, match(2));
    expect(body).toMatchObject({ reads: `Verified on ${TODAY}`, remedy: { state: 'verified', independent: true } });
    expect(body.due).toBeUndefined();
  });

  it('records nothing of the work when one of its facts is refused', async () => {
    const owner = await signedIn();
    const { vessel, enter } = await aBoat(owner);
    const { item } = await anItem(owner.organisation.ctx(), vessel.id, 'gas_hose');
    const { id } = await enter();
    const fact = (on: string) => ({
      itemId: item.id,
      fact: { fact: 'replaced', on, outcome: 'passed', evidence: 'record' },
    });

    const told = await owner.post<Problem>(
      `/v1/findings/${id}/remedy`,
      { step: 'report_done', work: 'Replaced', doneOn: TODAY, facts: [fact(TODAY), fact('2027-01-01')] },
      match(1),
    );

    expect([told.status, pointersOf(told)]).toEqual([422, ['/facts/1/fact/on']]);
    expect((await owner.get<{ items: unknown[] }>(`/v1/items/${item.id}/facts`)).body.items).toEqual([]);
    expect((await owner.get<Finding>(`/v1/findings/${id}`)).body.remedy.state).toBe('found');
  });

  it('comes back for review when it is put off by a named person, within the organisation’s cap', async () => {
    const owner = await signedIn();
    const { enter } = await aBoat(owner);
    const { id } = await enter(DRAIN);
    const put = {
      step: 'defer',
      until: '2027-03-01',
      reviewOn: '2027-02-01',
      responsible: 'Tomas Reef',
      reason: 'parts',
    };

    const far = await owner.post<Problem>(
      `/v1/findings/${id}/remedy`,
      { ...put, until: '2028-03-01', reviewOn: '2028-03-01' },
      match(1),
    );
    expect([far.status, pointersOf(far)]).toEqual([422, ['/reviewOn']]);
    const { body } = await owner.post<Finding>(`/v1/findings/${id}/remedy`, put, match(1));
    expect(body.due).toMatchObject({ source: 'deferral', on: '2027-02-01', standing: 'in_date' });
    expect(body.reads).toBe('Put off; Tomas Reef looks at it again on 2027-02-01');
  });

  // MGN 280 27.3.3 (read): the certificate runs no longer than five years from the examination out of the water.
  it('is not put off past what the broken rule asks of the thing itself, nor accepted', async () => {
    const owner = await signedIn();
    const ctx = owner.organisation.ctx();
    const vessel = await aVessel(ctx, ['uk_small_commercial']);
    const { item } = await anItem(ctx, vessel.id, 'small_commercial_certificate');
    await state(ctx, item.id, { fact: 'printed_expiry', on: '2027-01-31' });
    const found = { ...DRAIN, what: 'Certificate soon out of date', itemId: item.id, ruleId: 'cert-mgn280' };
    const { id } = (await owner.post<Finding>(`/v1/vessels/${vessel.id}/findings`, found)).body;
    const put = { reviewOn: '2027-01-10', responsible: 'Tomas Reef', reason: 'booked' };
    const step = (body: object) => owner.post<Problem>(`/v1/findings/${id}/remedy`, { ...put, ...body }, match(1));

    const late = await step({ step: 'defer', until: '2027-02-15' });
    expect([late.status, late.body.errors]).toEqual([
      422,
      [{ pointer: '/until', detail: 'lies after 2027-01-31: MGN 280 27.3.3' }],
    ]);
    expect(pointersOf(await step({ step: 'accept' }))).toEqual(['/step']);
    expect((await step({ step: 'defer', until: '2027-01-31' })).status).toBe(200);
  });

  it('cannot be put off by the yard, nor for what must be dealt with before use', async () => {
    const owner = await signedIn();
    const yard = await owner.as('yard');
    const { enter } = await aBoat(owner);
    const [hose, drain] = [await enter(), await enter(DRAIN)];
    const accept = { step: 'accept', reviewOn: '2027-02-01', responsible: 'Tomas Reef', reason: 'cosmetic' };

    expect((await yard.post(`/v1/findings/${drain.id}/remedy`, accept, match(1))).status).toBe(403);
    const told = await owner.post<Problem>(`/v1/findings/${hose.id}/remedy`, accept, match(1));
    expect([told.status, pointersOf(told)]).toEqual([422, ['/step']]);
  });

  it('closed by the only pair of eyes says so wherever it is read', async () => {
    const owner = await signedIn();
    const { enter } = await aBoat(owner);
    const { id } = await enter(DRAIN);
    const terms = { withinWeeksDays: 14, putOffAtMostDays: 365, secondPairOfEyes: false };
    await owner.post(`/v1/findings/${id}/remedy`, { step: 'report_done', work: 'Cleared', doneOn: TODAY }, match(1));
    const verify = () => owner.post<Finding>(`/v1/findings/${id}/verification`, { right: true, evidence }, match(2));
    expect((await verify()).status).toBe(422);

    await owner.put('/v1/finding-terms', terms, match(1));
    expect((await verify()).body.reads).toBe(`Closed on ${TODAY}, not independently checked`);
    const listed = (await owner.get<FindingPage>('/v1/findings?open=false')).body.items;
    expect(listed.map(({ reads }) => reads)).toEqual([`Closed on ${TODAY}, not independently checked`]);
  });
});
