import type { DueList } from '@garboard/contract/due-list/due-list.ts';
import type { Problem } from '@garboard/contract/problem.ts';
import type { AnsweredNotice, NoticeItemPage, NoticeMatches } from '@garboard/contract/safety-notice/answer.ts';
import type { SafetyNotice, SafetyNoticePage } from '@garboard/contract/safety-notice/notice.ts';
import { signedIn } from '@garboard/tests/support/api.ts';
import { ofRules } from '@garboard/tests/support/due-rows.ts';
import { everythingOf } from '@garboard/tests/support/everything-of.ts';
import { hosePlate } from '@garboard/tests/support/notices.ts';
import { anItem, aVessel } from '@garboard/tests/support/vessels.ts';
import { describe, expect, it } from 'vitest';

const NOTICES = '/v1/safety-notices';
const HOSES = {
  title: 'Hoses that may come off the tail',
  publisher: 'Quillmere Hose Works',
  reference: 'QH-2026-09',
  issuedOn: '2026-09-03',
  document: 'Letter to owners, 3 September 2026',
  kinds: ['gas_hose'],
  makers: ['Quillmere Hose Works'],
  serials: [{ from: 'AB1200', to: 'AB1399' }],
  hazard: 'gas can escape below',
  action: { kind: 'replace', words: 'Have the hose replaced by a gas engineer' },
  deadline: { kind: 'on', on: '2026-12-31' },
  weight: 'maker',
};
const DONE = {
  answer: 'done',
  on: '2026-10-01',
  doneBy: { name: 'Ines Vale', capacity: 'gas_engineer' },
  evidence: 'certificate',
};
const pointers = ({ errors }: Problem) => errors?.map(({ pointer }) => pointer).sort();

async function aFleet() {
  const owner = await signedIn();
  const ctx = owner.organisation.ctx();
  const teal = await aVessel(ctx, [], 'Teal');
  const wigeon = await aVessel(ctx, [], 'Wigeon');
  const hose = async (vesselId: string, serial: string | null) =>
    (await anItem(ctx, vesselId, 'gas_hose', 'Gas hose', hosePlate(serial))).item.id;
  const within = await hose(teal.id, 'AB1250');
  const unread = await hose(wigeon.id, null);
  const outside = await hose(wigeon.id, 'AB1400');
  const enter = async (more: object = {}) => (await owner.post<SafetyNotice>(NOTICES, { ...HOSES, ...more })).body;
  const answersTo = (noticeId: string, itemId: string) => `${NOTICES}/${noticeId}/items/${itemId}/answers`;
  const states = async (noticeId: string, query = '') => {
    const { body } = await owner.get<NoticeItemPage>(`${NOTICES}/${noticeId}/items${query}`);
    return Object.fromEntries(body.items.map(({ item, state }) => [item.id, state]));
  };
  return { owner, ctx, within, unread, outside, enter, answersTo, states };
}

describe('POST /v1/safety-notices', () => {
  it('enters it, and the due list carries it at once with its reasoning', async () => {
    const { owner, within, unread } = await aFleet();

    const { status, headers, body } = await owner.post<SafetyNotice>(NOTICES, HOSES);

    expect([status, headers.get('etag'), headers.get('location')]).toEqual([201, '"1"', `${NOTICES}/${body.id}`]);
    expect(body).toMatchObject({ ...HOSES, dueOn: '2026-12-31', state: 'open' });
    expect(body.counts).toEqual({ affected: 1, mayBeAffected: 1, answered: 0 });
    const due = (await owner.get<DueList>('/v1/due?source=safety_notice')).body;
    expect(ofRules(due).map(({ item, source, ruleId }) => [item.id, source, ruleId])).toEqual(
      [within, unread].map((id) => [id, 'safety_notice', `notice:${body.id}`]),
    );
    expect((await owner.get<DueList>('/v1/due?source=obligation')).body.items).toEqual([]);
  });

  it('names every fault, and writes nothing', async () => {
    const { owner } = await aFleet();
    const before = await everythingOf(owner.organisation.id);

    const shape = await owner.post<Problem>(NOTICES, {
      ...HOSES,
      kinds: [],
      weight: 'own',
      hazard: ' ',
      deadline: { kind: 'on' },
    });
    const meaning = await owner.post<Problem>(NOTICES, {
      ...HOSES,
      kinds: ['no_such_kind'],
      serials: [{ from: 'AB2', to: 'AB1' }, {}],
      issuedOn: '2026-12-24',
      document: undefined,
    });

    expect([shape, meaning].map(({ status }) => status)).toEqual([422, 422]);
    expect(pointers(shape.body)).toEqual(['/deadline/on', '/hazard', '/kinds', '/weight']);
    expect(pointers(meaning.body)).toEqual(['/document', '/issuedOn', '/kinds/0', '/serials/0', '/serials/1']);
    expect(await everythingOf(owner.organisation.id)).toEqual(before);
  });
});

describe('POST /v1/safety-notices/matches', () => {
  it('says what it would cover, may cover and does not, with the reason, and writes nothing', async () => {
    const { owner, within, unread, outside } = await aFleet();
    const viewer = await owner.as('viewer');
    const before = await everythingOf(owner.organisation.id);

    const { status, body } = await viewer.post<NoticeMatches>(`${NOTICES}/matches`, HOSES);

    expect([status, body.counts]).toEqual([200, { affected: 1, mayBeAffected: 1, notAffected: 1, vessels: 2 }]);
    expect(body.items.map(({ item, match, missing }) => [item.id, match, missing])).toEqual([
      [within, 'affected', []],
      [unread, 'may_be_affected', ['serial number']],
      [outside, 'not_affected', []],
    ]);
    expect(body.items[2]?.because).toEqual(['serial number AB1400 is not among AB1200–AB1399']);
    expect(await everythingOf(owner.organisation.id)).toEqual(before);
  });

  it('names the same faults as entering it', async () => {
    const { owner } = await aFleet();
    const { status, body } = await owner.post<Problem>(`${NOTICES}/matches`, { ...HOSES, serials: [{}] });
    expect([status, pointers(body)]).toEqual([422, ['/serials/0']]);
  });
});

describe('GET /v1/safety-notices', () => {
  it('lists the latest first, page after page, by whether something still waits', async () => {
    const { owner, within, unread, enter, answersTo } = await aFleet();
    const open = await enter();
    const answered = await enter({ issuedOn: '2026-09-05', serials: [{ from: 'AB1250', to: 'AB1250' }], makers: [] });
    const withdrawn = await enter({ issuedOn: '2026-09-04' });
    await owner.post(answersTo(answered.id, within), DONE);
    await owner.post(answersTo(answered.id, unread), { ...DONE, answer: 'not_affected', serialRead: 'AB1300' });
    await owner.post(`${NOTICES}/${withdrawn.id}/withdrawal`, { reason: 'error' }, { 'if-match': '"1"' });
    const ids = async (query: string) =>
      (await owner.get<SafetyNoticePage>(`${NOTICES}${query}`)).body.items.map(({ id }) => id);

    const first = (await owner.get<SafetyNoticePage>(`${NOTICES}?limit=2`)).body;
    expect(first.items.map(({ id }) => id)).toEqual([answered.id, withdrawn.id]);
    expect(await ids(`?limit=2&cursor=${first.nextCursor}`)).toEqual([open.id]);
    expect(await ids('?state=open')).toEqual([open.id]);
    expect(await ids('?state=answered')).toEqual([answered.id]);
    expect(await ids('?state=withdrawn')).toEqual([withdrawn.id]);
  });

  it('shows nothing of another organisation', async () => {
    const { enter } = await aFleet();
    await enter();
    const { owner: other } = await aFleet();
    expect((await other.get<SafetyNoticePage>(NOTICES)).body.items).toEqual([]);
  });
});

describe('GET /v1/safety-notices/{noticeId}/items', () => {
  it('lists what it is about, page after page', async () => {
    const { owner, within, unread, enter } = await aFleet();
    const { id } = await enter();
    const first = (await owner.get<NoticeItemPage>(`${NOTICES}/${id}/items?limit=1`)).body;
    const second = (await owner.get<NoticeItemPage>(`${NOTICES}/${id}/items?limit=1&cursor=${first.nextCursor}`)).body;
    expect([first, second].map(({ items }) => items.map(({ item }) => item.id))).toEqual([[within], [unread]]);
    expect(second.nextCursor).toBeNull();
    expect(second.items[0]).toMatchObject({
      state: 'may_be_affected',
      because: ['its serial number is not on record'],
    });
  });

  it('answers as at a day and as known at an instant, in agreement with the due list', async () => {
    const { owner, within, unread, enter, answersTo, states } = await aFleet();
    const { id } = await enter();
    await owner.post(answersTo(id, within), { ...DONE, replaced: true, serialRead: 'AC0001' });
    await owner.post(answersTo(id, unread), { ...DONE, answer: 'not_affected', serialRead: 'AB0777' });
    const due = async (query: string) =>
      ofRules((await owner.get<DueList>(`/v1/due?source=safety_notice&${query}`)).body)
        .map(({ item }) => item.id)
        .sort();

    expect(await states(id)).toEqual({ [within]: 'answered', [unread]: 'answered' });
    // The number read since says that it was never covered; the other was, until it was replaced.
    expect(await states(id, '?asOf=2026-09-30')).toEqual({ [within]: 'affected' });
    expect(await due('asOf=2026-09-30')).toEqual([within]);
    expect(await states(id, '?asOf=2026-09-02')).toEqual({});
    expect(await due('asOf=2026-10-01')).toEqual([]);
    expect(await states(id, '?knownAt=2026-11-25T11:59:59Z')).toEqual({});
  });
});

describe('POST /v1/safety-notices/{noticeId}/items/{itemId}/answers', () => {
  it('records what was done with what it says of the thing, once for one key', async () => {
    const { owner, within, enter, answersTo, states } = await aFleet();
    const { id } = await enter();
    const answer = { ...DONE, reference: 'W-118', replaced: true, serialRead: 'AC0001' };
    const send = () => owner.post<AnsweredNotice>(answersTo(id, within), answer, { 'idempotency-key': 'once' });

    const { status, headers, body } = await send();
    const again = await send();

    expect([status, headers.get('location')]).toEqual([201, `${NOTICES}/${id}/items`]);
    expect(body.answer).toMatchObject({ ...answer, itemId: within, corrects: null, struckOutBy: null });
    expect([again.body.answer.id, again.headers.get('idempotency-replayed')]).toEqual([body.answer.id, 'true']);
    expect(await states(id)).toMatchObject({ [within]: 'answered' });
    expect((await owner.get<{ serialNumber: string }>(`/v1/items/${within}`)).body.serialNumber).toBe('AC0001');
  });

  it('keeps a struck-out answer in sight', async () => {
    const { owner, within, enter, answersTo } = await aFleet();
    const { id } = await enter();
    const wrong = (await owner.post<AnsweredNotice>(answersTo(id, within), DONE)).body.answer;
    const twice = await owner.post<Problem>(answersTo(id, within), DONE);
    expect([twice.status, pointers(twice.body)]).toEqual([422, ['/corrects']]);

    const right = {
      ...DONE,
      answer: 'reopened',
      note: 'It was the other hose.',
      corrects: wrong.id,
      evidence: undefined,
    };
    const { body } = await owner.post<AnsweredNotice>(answersTo(id, within), right);

    const { items } = (await owner.get<NoticeItemPage>(`${NOTICES}/${id}/items?limit=1`)).body;
    expect(items[0]?.state).toBe('affected');
    expect(items[0]?.answers.map(({ answer, struckOutBy }) => [answer, struckOutBy])).toEqual([
      ['done', body.answer.id],
      ['reopened', null],
    ]);
  });

  it('is for those who record facts, and names every fault', async () => {
    const { owner, within, unread, enter, answersTo } = await aFleet();
    const { id } = await enter({ deadline: { kind: 'before_next_use' } });
    const viewer = await owner.as('viewer');
    const yard = await owner.as('yard');
    expect((await viewer.post(answersTo(id, within), DONE)).status).toBe(403);

    const later = await yard.post<Problem>(answersTo(id, within), {
      ...DONE,
      answer: 'deferred',
      until: '2026-12-01',
      note: 'away',
    });
    const covered = await yard.post<Problem>(answersTo(id, unread), {
      ...DONE,
      answer: 'not_affected',
      serialRead: 'ab 1300',
    });
    const future = await yard.post<Problem>(answersTo(id, within), { ...DONE, on: '2026-11-26', evidence: undefined });

    expect([later, covered, future].map(({ status }) => status)).toEqual([422, 422, 422]);
    expect([later, covered, future].map(({ body }) => pointers(body))).toEqual([
      ['/answer'],
      ['/serialRead'],
      ['/evidence', '/on'],
    ]);
    expect((await yard.post(answersTo(id, within), DONE)).status).toBe(201);
  });

  it('has nothing to answer for what the notice does not cover, nor for another’s thing', async () => {
    const { owner, outside, enter, answersTo } = await aFleet();
    const { id } = await enter();
    const other = await aFleet();

    const spared = await owner.post<Problem>(answersTo(id, outside), DONE);
    expect([spared.status, spared.body.detail]).toEqual([
      409,
      expect.stringContaining('AB1400 is not among AB1200–AB1399'),
    ]);
    expect((await owner.post(answersTo(id, other.within), DONE)).status).toBe(404);
    expect((await other.owner.post(answersTo(id, other.within), DONE)).status).toBe(404);
  });
});

describe('POST /v1/safety-notices/{noticeId}/withdrawal', () => {
  it('ends what it asks, keeps what was answered, and asks for the version that was read', async () => {
    const { owner, within, unread, enter, answersTo, states } = await aFleet();
    const { id } = await enter();
    await owner.post(answersTo(id, within), DONE);
    const withdraw = (headers: Record<string, string>) =>
      owner.post<SafetyNotice>(`${NOTICES}/${id}/withdrawal`, { reason: 'The maker took it back.' }, headers);

    expect((await withdraw({})).status).toBe(428);
    expect((await withdraw({ 'if-match': '"9"' })).status).toBe(412);
    const { status, headers, body } = await withdraw({ 'if-match': '"1"' });

    expect([status, headers.get('etag'), body.state]).toEqual([200, '"2"', 'withdrawn']);
    expect(body.withdrawn).toMatchObject({ on: '2026-11-25', reason: 'The maker took it back.' });
    expect(await states(id)).toEqual({ [within]: 'answered' });
    expect(await states(id, '?asOf=2026-11-24')).toEqual({ [within]: 'answered', [unread]: 'may_be_affected' });
    expect((await owner.get<DueList>('/v1/due?source=safety_notice')).body.items).toEqual([]);
    expect((await owner.post(answersTo(id, unread), DONE)).status).toBe(409);
    expect((await withdraw({ 'if-match': '"2"' })).status).toBe(409);
  });
});
