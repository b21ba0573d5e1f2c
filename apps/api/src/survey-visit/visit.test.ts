import { createHash } from 'node:crypto';
import type { AuditPage } from '@garboard/contract/audit/audit.ts';
import type { DueList } from '@garboard/contract/due-list/due-list.ts';
import type { Finding } from '@garboard/contract/finding/finding.ts';
import type { Problem } from '@garboard/contract/problem.ts';
import type { SealedCopy, SurveyRoute, Visit, VisitPage } from '@garboard/contract/survey-visit/visit.ts';
import type { Limitation, Referral } from '@garboard/contract/survey-visit/walk.ts';
import { match, pointersOf, signedIn } from '@garboard/tests/support/api.ts';
import { aFinding } from '@garboard/tests/support/findings.ts';
import { TODAY } from '@garboard/tests/support/organisation.ts';
import { aVessel } from '@garboard/tests/support/vessels.ts';
import { aBoat, looked, NEW, SURVEYOR } from '@garboard/tests/support/visited-boat.ts';
import { describe, expect, it } from 'vitest';

describe('a visit', () => {
  it('begins with who came, the route as it is that day, and what the last ones left open where it lies', async () => {
    const owner = await signedIn();
    const { vessel, start, walk } = await aBoat(owner);
    const hose = await aFinding(owner.organisation.ctx(), vessel.id, {}, '2026-05-01');
    const visit = await start();
    await owner.put('/v1/survey-routes/open_boat', { zones: [{ zone: 'deck', name: 'Deck' }] }, match(2));

    expect(visit).toMatchObject({ state: 'open', vessel: { name: 'Marsh Harrier' }, persons: [SURVEYOR] });
    expect((await owner.get<Visit>(`/v1/visits/${visit.id}`)).body.route.map(({ zone }) => zone)).toEqual([
      'papers',
      'gas_installation',
    ]);
    const { stops, unanswered } = await walk(visit.id);
    expect(stops[1]?.findings).toMatchObject([{ id: hose.id, number: 1, version: 1 }]);
    expect(unanswered.map(({ what, zone }) => `${what} ${zone}`)).toEqual([
      'zone papers',
      'zone gas_installation',
      'finding gas_installation',
    ]);
  });

  it('is refused with every fault of what was written', async () => {
    const owner = await signedIn();
    const { vessel } = await aBoat(owner);
    const meter = { key: 'meter', maker: 'Quillmere', model: 'QM-2' };
    const wrong = {
      ...NEW,
      startedOn: '2026-11-26',
      water: 'afloat',
      ashoreSince: '2026-11-01',
      instruments: [meter, meter],
    };

    const told = await owner.post<Problem>(`/v1/vessels/${vessel.id}/visits`, wrong);

    expect([told.status, pointersOf(told)]).toEqual([422, ['/startedOn', '/ashoreSince', '/instruments/1/key']]);
    expect((await owner.get<VisitPage>('/v1/visits')).body.items).toEqual([]);
  });

  it('cannot be completed until every place, finding and limitation is answered: the refusal says which and where', async () => {
    const owner = await signedIn();
    const { vessel, start, sound, complete } = await aBoat(owner);
    const ctx = owner.organisation.ctx();
    const hose = await aFinding(ctx, vessel.id, {}, '2026-05-01');
    const first = await start({ startedOn: '2026-11-20' });
    const limitation = (
      await owner.post<Limitation>(`/v1/visits/${first.id}/limitations`, {
        zone: 'papers',
        what: 'Ship’s papers',
        reason: 'item_not_on_board',
      })
    ).body;
    const { id } = await start();
    await sound(id, 'papers');

    const told = await complete(id);
    expect([told.status, pointersOf(told)]).toEqual([
      422,
      [`/limitations/${limitation.id}`, '/zones/gas_installation', `/findings/${hose.id}`],
    ]);
    expect(told.body.errors?.[2]?.detail).toContain('Gas hose cracked at the cooker (gas installation)');

    await sound(id, 'gas_installation');
    await owner.post(
      `/v1/findings/${hose.id}/sightings`,
      { seen: 'not_examined', on: TODAY, visitId: id, words: 'locker full' },
      match(1),
    );
    await owner.post(
      `/v1/limitations/${limitation.id}/answers`,
      { visitId: id, answer: 'lifted', words: 'Papers shown, all in order' },
      match(1),
    );
    const done = await complete(id);
    expect([done.status, done.body.state, done.body.completedOn]).toEqual([200, 'completed', TODAY]);
    expect((await owner.get<Finding>(`/v1/findings/${hose.id}`)).body.remedy.state).toBe('found');
  });

  it('is sealed: nothing of it changes, anybody can hash its copy, and a correction stands beside it', async () => {
    const owner = await signedIn();
    const { vessel, start, sound, complete } = await aBoat(owner);
    const { id } = await start();
    const early = { name: 'Ines Vale', words: 'x', reason: 'y' };
    expect((await owner.post(`/v1/visits/${id}/addenda`, early)).status).toBe(409);
    expect((await owner.get(`/v1/visits/${id}/sealed-copy`)).status).toBe(404);
    for (const zone of ['papers', 'gas_installation']) await sound(id, zone);
    const { sealedHash } = (await complete(id)).body;

    const changes = await Promise.all([
      sound(id, 'papers'),
      owner.patch(`/v1/visits/${id}`, { weather: 'dry' }, match(2)),
      owner.post(`/v1/visits/${id}/readings`, { zone: 'papers', point: 'p', measure: 'moisture', value: 1 }),
      owner.post(`/v1/visits/${id}/limitations`, { zone: 'papers', what: 'x', reason: 'afloat' }),
      complete(id, 2),
    ]);
    expect(changes.map(({ status }) => status)).toEqual([409, 409, 409, 409, 409]);
    const late = { zone: 'papers', what: 'Late', hazard: 'value', urgency: 'observe', on: TODAY, visitId: id };
    const told = await owner.post<Problem>(`/v1/vessels/${vessel.id}/findings`, late);
    expect([told.status, pointersOf(told)]).toEqual([422, ['/visitId']]);

    const words = 'The number is 4471, not 4417.';
    await owner.post(`/v1/visits/${id}/addenda`, { name: 'Ines Vale', words, reason: 'Misread.' });
    const { body: copy } = await owner.get<SealedCopy>(`/v1/visits/${id}/sealed-copy`);
    expect(createHash('sha256').update(copy.sealed).digest('hex')).toBe(sealedHash);
    expect(copy.addenda).toMatchObject([{ name: 'Ines Vale', words, reason: 'Misread.' }]);
    expect(JSON.parse(copy.sealed)).toMatchObject({
      visit: { id, route: [{ zone: 'papers' }, { zone: 'gas_installation' }] },
    });
  });

  it('answers findings in its name, and lets before_use down only where a surveyor attends', async () => {
    const owner = await signedIn('manager');
    const { vessel, start } = await aBoat(owner);
    const ctx = owner.organisation.ctx();
    const { id } = await aFinding(ctx, vessel.id, { urgency: 'before_use' }, '2026-05-01');
    const [house, survey] = [await start({ persons: [] }), await start()];
    const lower = (visitId: string) =>
      owner.post<Finding & Problem>(
        `/v1/findings/${id}/sightings`,
        { seen: 'better', on: TODAY, visitId, urgency: 'observe' },
        match(1),
      );

    const refused = await lower(house.id);
    expect([refused.status, pointersOf(refused)]).toEqual([422, ['/urgency']]);
    expect((await lower(survey.id)).body.urgency).toBe('observe');
    const gone = { seen: 'gone', on: TODAY, visitId: survey.id, evidence: looked };
    expect((await owner.post<Finding>(`/v1/findings/${id}/sightings`, gone, match(2))).body.reads).toBe(
      `Verified on ${TODAY}`,
    );
    const yard = await owner.as('yard');
    const theirs = await yard.post<Problem>(
      `/v1/findings/${id}/sightings`,
      { seen: 'worse', on: TODAY, visitId: survey.id },
      match(3),
    );
    expect([theirs.status, pointersOf(theirs)]).toEqual([422, ['/visitId']]);
  });
});

it('whatever was said of a visit and its findings is found from the vessel, in who changed what', async () => {
  const owner = await signedIn();
  const { vessel, start, sound, complete } = await aBoat(owner);
  const hose = await aFinding(owner.organisation.ctx(), vessel.id, {}, '2026-05-01');
  const { id } = await start();
  const seen = { seen: 'worse', on: TODAY, visitId: id };
  await owner.post(`/v1/findings/${hose.id}/sightings`, seen, match(1));
  for (const zone of ['papers', 'gas_installation']) await sound(id, zone);
  await complete(id);
  await owner.post(`/v1/visits/${id}/addenda`, { name: 'Ines Vale', words: 'Misread', reason: 'typing' });

  const { items } = (await owner.get<AuditPage>(`/v1/audit?vesselId=${vessel.id}&limit=20`)).body;
  expect(items.map(({ verb }) => verb).reverse()).toEqual([
    ...['create_vessel', 'finding_found', 'start_visit', 'finding_seen', 'answer_zone', 'answer_zone'],
    ...['complete_visit', 'add_addendum'],
  ]);
});

describe('what a visit leaves to others', () => {
  it('stands on the one due list: a limitation until it is lifted, a referral until its result', async () => {
    const owner = await signedIn();
    const { vessel, start } = await aBoat(owner);
    const { id } = await start();
    const limitation = (
      await owner.post<Limitation>(`/v1/visits/${id}/limitations`, {
        zone: 'deck',
        what: 'Under the teak',
        reason: 'not_dismantled',
      })
    ).body;
    const asked = { zone: 'mast_and_rigging', trade: 'rigger', what: 'All terminals', dueOn: '2027-02-27' };
    const referral = (await owner.post<Referral>(`/v1/visits/${id}/referrals`, asked)).body;
    const due = async (query = '') =>
      (await owner.get<DueList>(`/v1/due?${query}`)).body.items.map((line) =>
        'id' in line ? [line.source, line.dueOn] : [],
      );

    expect(await due()).toEqual([['referral', '2027-02-27']]);
    expect(await due('standing=unknown')).toEqual([['limitation', undefined]]);
    await owner.post(`/v1/vessels/${vessel.id}/events`, { event: 'inspection', on: '2027-01-11', planned: true });
    expect(await due()).toEqual([
      ['limitation', '2027-01-11'],
      ['referral', '2027-02-27'],
    ]);
    expect(await due('knownAt=2999-01-01T00:00:00Z')).toEqual(await due());

    const result = { on: TODAY, by: 'Orla Stave', words: 'Port lower terminal cracked.' };
    await owner.post(`/v1/referrals/${referral.id}/result`, result, match(1));
    await owner.post(
      `/v1/limitations/${limitation.id}/answers`,
      { visitId: id, answer: 'lifted', words: 'dry' },
      match(1),
    );
    expect([...(await due()), ...(await due('standing=unknown'))]).toEqual([]);
    expect(await due('knownAt=2999-01-01T00:00:00Z')).toEqual([]);
    expect((await owner.post(`/v1/referrals/${referral.id}/result`, result, match(2))).status).toBe(409);
  });

  it('is lifted by an open visit to the same vessel alone, with what was seen', async () => {
    const owner = await signedIn();
    const [one, two] = [await aBoat(owner), await aBoat(owner)];
    const [visit, foreign] = [await one.start(), await two.start()];
    const { id } = (
      await owner.post<Limitation>(`/v1/visits/${visit.id}/limitations`, {
        zone: 'deck',
        what: 'Teak',
        reason: 'afloat',
      })
    ).body;
    const answer = (more: object) =>
      owner.post<Problem>(`/v1/limitations/${id}/answers`, { visitId: visit.id, ...more }, match(1));

    expect(pointersOf(await answer({ visitId: foreign.id, answer: 'lifted', words: 'dry' }))).toEqual(['/visitId']);
    expect(pointersOf(await answer({ answer: 'lifted' }))).toEqual(['/words']);
    expect(pointersOf(await answer({ answer: 'still' }))).toEqual(['/reason']);
    expect((await answer({ answer: 'still', reason: 'afloat' })).status).toBe(200);
  });
});

it('a route of one’s own is walked in its order, and no place stands on it twice', async () => {
  const owner = await signedIn();
  const deck = { zone: 'flybridge', name: 'Flybridge' };
  const { body, headers } = await owner.get<SurveyRoute>('/v1/survey-routes/motor_boat');
  const version = { 'if-match': headers.get('etag') ?? '' };
  const twice = await owner.put<Problem>('/v1/survey-routes/motor_boat', { zones: [deck, deck] }, version);
  expect([twice.status, pointersOf(twice)]).toEqual([422, ['/zones/1/zone']]);
  await owner.put('/v1/survey-routes/motor_boat', { zones: [deck, ...body.zones] }, version);

  const vessel = await aVessel(owner.organisation.ctx());
  const visit = (await owner.post<Visit>(`/v1/vessels/${vessel.id}/visits`, { ...NEW, craft: 'motor_boat' })).body;
  expect(visit.route[0]).toEqual(deck);
  const found = { zone: 'flybridge', what: 'Rail loose', hazard: 'life', urgency: 'before_use', on: TODAY };
  expect((await owner.post(`/v1/vessels/${vessel.id}/findings`, found)).status).toBe(201);
});
