import type { DueList } from '@garboard/contract/due-list/due-list.ts';
import type { AlikeFindings, Finding, FindingEntryPage, FindingPage } from '@garboard/contract/finding/finding.ts';
import type { FindingTerms } from '@garboard/contract/finding/remedy.ts';
import type { Problem } from '@garboard/contract/problem.ts';
import { match, pointersOf, signedIn } from '@garboard/tests/support/api.ts';
import { aBoat, DRAIN, HOSE } from '@garboard/tests/support/boat-with-findings.ts';
import { TODAY } from '@garboard/tests/support/organisation.ts';
import { anItem, aVessel, state } from '@garboard/tests/support/vessels.ts';
import { describe, expect, it } from 'vitest';

describe('a finding entered', () => {
  it('has a number, a day by its urgency, and says what may come next', async () => {
    const owner = await signedIn();
    const { vessel } = await aBoat(owner);
    const { status, body, headers } = await owner.post<Finding>(`/v1/vessels/${vessel.id}/findings`, HOSE);

    expect(status).toBe(201);
    expect(headers.get('location')).toBe(`/v1/findings/${body.id}`);
    expect(body).toMatchObject({
      number: 1,
      vessel: { name: 'Marsh Harrier' },
      urgencySince: '2026-11-20',
      reads: 'Found; nothing decided yet',
      due: { source: 'finding', on: '2026-11-20', standing: 'overdue' },
    });
    expect((await owner.get<Finding>(`/v1/findings/${body.id}`)).body).toEqual(body);
  });

  it('names every fault of what was written, and writes nothing', async () => {
    const owner = await signedIn();
    const { vessel } = await aBoat(owner);
    const other = await aVessel(owner.organisation.ctx());
    const { item } = await anItem(owner.organisation.ctx(), other.id, 'gas_hose');
    const wrong = {
      ...HOSE,
      on: '2026-11-26',
      zone: 'sun_deck',
      itemId: item.id,
      ruleId: 'none',
      urgentBy: '2026-12-01',
    };

    const told = await owner.post<Problem>(`/v1/vessels/${vessel.id}/findings`, wrong);

    expect(told.status).toBe(422);
    expect(pointersOf(told)).toEqual(['/on', '/urgentBy', '/zone', '/itemId', '/ruleId']);
    expect((await owner.get<FindingPage>('/v1/findings')).body.items).toEqual([]);
  });

  it('counts on within its own vessel', async () => {
    const owner = await signedIn();
    const [one, two] = [await aBoat(owner), await aBoat(owner)];
    expect([(await one.enter()).number, (await one.enter(DRAIN)).number, (await two.enter()).number]).toEqual([
      1, 2, 1,
    ]);
  });

  it('is proposed for linking when the same thing is found again', async () => {
    const owner = await signedIn();
    const { vessel, enter } = await aBoat(owner);
    const known = await enter();
    await enter(DRAIN);
    const asked = new URLSearchParams({ zone: 'gas_installation', what: 'cooker hose perished' });

    const { body } = await owner.get<AlikeFindings>(`/v1/vessels/${vessel.id}/findings/alike?${asked}`);

    expect(body.items).toEqual([{ finding: known, because: ['the same place', 'the same words: cooker, hose'] }]);
  });
});

describe('the fleet’s findings', () => {
  it('come with the most urgent first, in pages, and by what they are', async () => {
    const owner = await signedIn();
    const [one, two] = [await aBoat(owner), await aBoat(owner)];
    await one.enter(DRAIN);
    await two.enter({ ...DRAIN, hazard: 'value', on: '2026-11-01' });
    await one.enter();
    const list = async (query: string) => (await owner.get<FindingPage>(`/v1/findings?${query}`)).body;

    const first = await list('limit=2');
    const rest = await list(`limit=2&cursor=${first.nextCursor}`);
    expect([...first.items, ...rest.items].map(({ urgency, hazard }) => `${urgency} ${hazard}`)).toEqual([
      'before_use fire_and_gas',
      'within_weeks fire_and_gas',
      'within_weeks value',
    ]);
    expect(rest.nextCursor).toBeNull();
    expect((await list('order=age')).items[0]?.hazard).toBe('value');
    expect((await list('hazard=value&open=true')).items).toHaveLength(1);
    expect((await list(`vesselId=${two.vessel.id}`)).items).toHaveLength(1);
    expect((await list('open=false')).items).toEqual([]);
  });
});

describe('what the organisation has agreed', () => {
  it('moves the days that hang on it, and the season and a planned haul-out do so too', async () => {
    const owner = await signedIn();
    const { vessel, enter } = await aBoat(owner);
    const weeks = await enter(DRAIN);
    const layUp = await enter({ ...DRAIN, urgency: 'next_lay_up' });
    const dueOf = async ({ id }: Finding) => (await owner.get<Finding>(`/v1/findings/${id}`)).body.due?.on;
    expect([await dueOf(weeks), await dueOf(layUp)]).toEqual(['2026-12-18', undefined]);

    const { body, headers } = await owner.get<FindingTerms>('/v1/finding-terms');
    await owner.put('/v1/finding-terms', { ...body, withinWeeksDays: 14 }, { 'if-match': headers.get('etag') ?? '' });
    await owner.put('/v1/season', { season: { from: '04-01', to: '10-15' } }, match(1));
    expect([await dueOf(weeks), await dueOf(layUp)]).toEqual(['2026-12-04', '2027-10-15']);

    await owner.post(`/v1/vessels/${vessel.id}/events`, { event: 'haul_out', on: '2027-01-11', planned: true });
    expect(await dueOf(layUp)).toBe('2027-01-11');
  });
});

describe('the story of a finding', () => {
  it('keeps every word that was said, in order', async () => {
    const owner = await signedIn();
    const { enter } = await aBoat(owner);
    const { id } = await enter(DRAIN);
    await owner.post(
      `/v1/findings/${id}/sightings`,
      { seen: 'worse', on: TODAY, words: 'Stands full', urgency: 'before_use' },
      match(1),
    );
    await owner.patch(`/v1/findings/${id}`, { responsible: 'Tomas Reef' }, match(2));
    await owner.post(
      `/v1/findings/${id}/remedy`,
      { step: 'propose', work: 'Rod it', estimate: { amount: '40.00', currency: 'EUR', author: 'Tomas Reef' } },
      match(3),
    );

    const { items } = (await owner.get<FindingEntryPage>(`/v1/findings/${id}/entries`)).body;

    expect(items.map(({ step }) => step)).toEqual(['found', 'seen', 'amended', 'proposed']);
    expect(items[1]?.said).toMatchObject({ seen: 'worse', words: 'Stands full', said: { urgency: 'before_use' } });
    expect(items[3]?.said).toMatchObject({ estimate: { amount: '40.00', currency: 'EUR' } });
  });

  it('goes on in the one it was merged into, and a part of it can become one of its own', async () => {
    const owner = await signedIn();
    const { vessel, enter } = await aBoat(owner);
    const [kept, twin] = [await enter(), await enter()];
    const merge = (into: string) =>
      owner.post<Finding>(`/v1/findings/${twin.id}/merge`, { into, reason: 'the same' }, match(1));
    const far = await (await aBoat(owner)).enter();

    expect((await merge(far.id)).status).toBe(422);
    expect((await merge(twin.id)).status).toBe(422);
    expect((await merge(kept.id)).body.remedy).toEqual({ state: 'merged', into: kept.id });
    const split = await owner.post<Finding>(
      `/v1/findings/${kept.id}/split`,
      { zone: 'gas_locker', what: 'Clip loose', hazard: 'fire_and_gas', urgency: 'before_use', reason: 'two things' },
      match(2),
    );
    expect([split.status, split.body.number]).toEqual([201, 3]);
    const steps = (await owner.get<FindingEntryPage>(`/v1/findings/${kept.id}/entries`)).body.items.map(
      ({ step }) => step,
    );
    expect(steps).toEqual(['found', 'took_in', 'split_off']);
    expect((await owner.get<FindingPage>(`/v1/findings?vesselId=${vessel.id}&open=true`)).body.items).toHaveLength(2);
  });

  it('tells whoever comes second what it says now, and loses nothing of the first', async () => {
    const owner = await signedIn();
    const { enter } = await aBoat(owner);
    const { id } = await enter(DRAIN);
    const change = (what: string) => owner.patch<Problem>(`/v1/findings/${id}`, { what }, match(1));

    const answers = await Promise.all([change('Drain blocked by a leaf'), change('Drain too narrow')]);

    expect(answers.map(({ status }) => status).sort()).toEqual([200, 412]);
    expect(answers.find(({ status }) => status === 412)?.headers.get('etag')).toBe('"2"');
    expect((await owner.get<FindingEntryPage>(`/v1/findings/${id}/entries`)).body.items).toHaveLength(2);
  });
});

describe('the one due list', () => {
  const lines = ({ items }: DueList) =>
    items.map((line) => ('ruleId' in line ? line.item.label : `${line.source}: ${line.label}`));

  async function aMixedList() {
    const owner = await signedIn();
    const { vessel, enter } = await aBoat(owner);
    const flare = async (label: string, on: string) => {
      const { item } = await anItem(owner.organisation.ctx(), vessel.id, 'hand_flare', label);
      await state(owner.organisation.ctx(), item.id, { fact: 'printed_expiry', on });
    };
    const drain = await enter(DRAIN);
    await enter();
    await enter({ ...DRAIN, urgency: 'observe', what: 'Lid stiff' });
    await enter({ ...DRAIN, what: 'Paint thin', hazard: 'value', urgency: 'within_weeks', urgentBy: '2027-02-01' });
    await flare('Old flare', '2026-10-31');
    await flare('New flare', '2026-12-31');
    await owner.post(
      `/v1/findings/${drain.id}/remedy`,
      { step: 'defer', until: '2027-01-15', reviewOn: '2027-01-15', responsible: 'Tomas Reef', reason: 'parts' },
      match(1),
    );
    const due = async (query = '') => (await owner.get<DueList>(`/v1/due?${query}`)).body;
    return { owner, vessel, due };
  }

  it('holds findings and reviews among what rules ask, in one order with one meaning of overdue', async () => {
    const { due } = await aMixedList();
    const body = await due();

    expect(lines(body)).toEqual([
      'Old flare',
      `finding: ${HOSE.what}`,
      'New flare',
      `deferral: ${DRAIN.what}`,
      'finding: Paint thin',
    ]);
    expect(body.matters).toEqual({ overdue: 1, due: 0, in_date: 2, unknown: 1 });
    expect(lines(await due('standing=overdue'))).toEqual(['Old flare', `finding: ${HOSE.what}`]);
    expect(lines(await due('standing=unknown'))).toEqual(['finding: Lid stiff']);
    expect(lines(await due('source=deferral'))).toEqual([`deferral: ${DRAIN.what}`]);
    expect(lines(await due('source=obligation'))).toEqual(['Old flare', 'New flare']);
    expect(lines(await due('horizonDays=40'))).toEqual(['Old flare', `finding: ${HOSE.what}`, 'New flare']);
    expect((await due('weight=law')).matters).toEqual({ overdue: 0, due: 0, in_date: 0, unknown: 0 });
  });

  it('gives each line once, page after page, and the same list when it is worked out anew', async () => {
    const { owner, due } = await aMixedList();
    const all: string[] = [];
    let cursor: string | null = '';
    while (cursor !== null) {
      const page: DueList = await due(`limit=1${cursor && `&cursor=${cursor}`}`);
      all.push(...lines(page));
      cursor = page.nextCursor;
    }
    expect(all).toEqual(lines(await due()));
    const anew = (await owner.get<DueList>('/v1/due?knownAt=2999-01-01T00:00:00Z')).body;
    expect(anew).toEqual(await due());
    expect(lines((await owner.get<DueList>('/v1/due?asOf=2026-11-19&source=finding')).body)).toEqual([]);
  });

  it('counts a vessel as overdue for what was found alone', async () => {
    const owner = await signedIn();
    const { enter } = await aBoat(owner);
    await enter();
    expect((await owner.get<DueList>('/v1/due')).body.vesselsOverdue).toBe(1);
  });
});

describe('the work of the next days', () => {
  it('is what is in hand, or due or planned by then; what was reported done or put off is not', async () => {
    const owner = await signedIn();
    const { enter } = await aBoat(owner);
    const act = (id: string, body: object) => owner.post(`/v1/findings/${id}/remedy`, body, match(1));
    const urgent = await enter();
    const [inHand, planned, later, done] = [
      await enter({ ...DRAIN, what: 'In hand', urgency: 'observe' }),
      await enter({ ...DRAIN, what: 'Planned', urgency: 'observe' }),
      await enter({ ...DRAIN, what: 'Later', urgency: 'observe' }),
      await enter({ ...HOSE, what: 'Done' }),
    ];
    await act(inHand.id, { step: 'begin' });
    await act(planned.id, { step: 'plan', forDay: '2026-12-02' });
    await act(later.id, { step: 'plan', forDay: '2026-12-03' });
    await act(done.id, { step: 'report_done', work: 'Renewed', doneOn: TODAY });

    const { items } = (await owner.get<FindingPage>('/v1/findings?doBy=2026-12-02&limit=2')).body;
    const { nextCursor } = (await owner.get<FindingPage>('/v1/findings?doBy=2026-12-02&limit=2')).body;
    const rest = (await owner.get<FindingPage>(`/v1/findings?doBy=2026-12-02&limit=2&cursor=${nextCursor}`)).body.items;
    expect([...items, ...rest].map(({ id }) => id).sort()).toEqual([urgent.id, inHand.id, planned.id].sort());
  });
});
