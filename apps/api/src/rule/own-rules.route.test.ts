import { workThroughRuleChanges } from '@garboard/actions/rule/work-through-rule-changes.ts';
import type { Explained } from '@garboard/contract/item/explain.ts';
import type { ObligationList } from '@garboard/contract/item/obligation.ts';
import type { Problem } from '@garboard/contract/problem.ts';
import { NewOwnRule, type RuleChange } from '@garboard/contract/rule/own-rule.ts';
import type { Rule, RulePage } from '@garboard/contract/rule/rule.ts';
import { RULES } from '@garboard/domain/rule/rules.ts';
import { type Client, signedIn } from '@garboard/tests/support/api.ts';
import { pools } from '@garboard/tests/support/database.ts';
import { NOW } from '@garboard/tests/support/organisation.ts';
import { anItem, aVessel, state } from '@garboard/tests/support/vessels.ts';
import { describe, expect, it } from 'vitest';

const MONTHLY = {
  kinds: ['gas_hose'],
  vessels: { which: 'all' },
  action: { kind: 'inspect', words: 'Look along the hose with a torch' },
  inWords: 'Every gas hose is looked at once a month.',
  limits: [{ kind: 'interval', from: 'last_done', plus: 'P1M' }],
  resets: [{ act: 'inspected', by: [] }],
  weight: 'own',
  takesEffectOn: '2026-03-01',
  decidedBy: 'Anna Berg',
  reason: 'One burst in the galley.',
  document: 'Standing orders, no. 4',
};
const ENDING = { takesEffectOn: '2026-11-20', decidedBy: 'Anna Berg', reason: 'Sold.', document: 'Minutes, 3 Nov' };
const pointers = ({ errors }: Problem) => errors?.map(({ pointer }) => pointer).sort();
const days = (n: number) => new Date(NOW.getTime() + n * 86_400_000);

async function aHose() {
  const owner = await signedIn();
  const ctx = owner.organisation.ctx();
  const vessel = await aVessel(ctx);
  const { item } = await anItem(ctx, vessel.id, 'gas_hose');
  await state(ctx, item.id, { fact: 'inspected', on: '2026-02-10' });
  const own = async (query = '') => {
    const { body } = await owner.get<ObligationList>(`/v1/items/${item.id}/obligations${query}`);
    return body.items.find(({ scheme }) => scheme === 'own');
  };
  const workThrough = (at = NOW) => workThroughRuleChanges(pools.app, owner.organisation.id, at);
  return { owner, vessel, item, own, workThrough };
}

const add = (owner: Client, more = {}) => owner.post<Rule>('/v1/rules', { ...MONTHLY, ...more });
const change = <Body = Rule>(owner: Client, id: string, etag: string, more = {}) =>
  owner.put<Body>(`/v1/rules/${id}`, { ...MONTHLY, ...more }, { 'if-match': etag });

describe('POST /v1/rules', () => {
  it('adds a rule that reads like a published one, and gives dates with their reasoning', async () => {
    const { owner, own, workThrough } = await aHose();

    const { status, headers, body } = await add(owner);

    expect([status, headers.get('etag'), headers.get('location')]).toEqual([201, '"1"', `/v1/rules/${body.id}`]);
    expect(body).toMatchObject({
      ...{ own: true, scheme: 'own', weight: 'own', kinds: ['gas_hose'], inWords: MONTHLY.inWords },
      source: { publication: 'Standing orders, no. 4', status: 'second_hand' },
      duties: [{ action: MONTHLY.action, resets: MONTHLY.resets }],
      reads: { facts: ['inspected'] },
      ownRule: { version: 1, inForce: 1 },
    });
    expect(body.ownRule?.versions).toMatchObject([{ number: 1, takesEffectOn: '2026-03-01', decidedBy: 'Anna Berg' }]);
    const path = `/v1/rule-changes/${body.ownRule?.versions[0]?.changeId}`;
    expect((await owner.get<RuleChange>(path)).body).toMatchObject({ state: 'running', itemsTotal: 1, itemsDone: 0 });
    await workThrough();
    expect((await owner.get<RuleChange>(path)).body).toMatchObject({ state: 'done', itemsDone: 1 });
    expect(await own()).toMatchObject({ ruleId: body.id, dueOn: '2026-03-10', weight: 'own', standing: 'overdue' });
    expect((await own())?.explanation.sentence).toContain('set by Anna Berg from 1 March 2026');
  });

  it('names every fault, those of the shape and those of the sense', async () => {
    const { owner } = await aHose();
    const post = (more: object) => owner.post<Problem>('/v1/rules', { ...MONTHLY, ...more });

    const shape = await post({
      ...{ kinds: [], weight: 'law', takesEffectOn: 'soon', decidedBy: ' ', vessels: { which: 'some' } },
      ...{
        limits: [{ kind: 'moon' }, { kind: 'interval', from: 'launch', plus: '3 weeks' }],
        resets: [{ act: 'moved', by: [] }],
      },
    });
    const sense = await post({
      ...{ kinds: ['sea_anchor', 'gas_hose'], takesEffectOn: '1066-10-14', resets: [] },
      limits: [
        { kind: 'interval', from: 'last_done', plus: 'P0D' },
        { kind: 'running_hours', hours: 100 },
      ],
      vessels: { which: 'chosen', vesselIds: ['0198c5a2-7b1e-7c3d-9a41-5f2e8d7c6b5a'] },
    });

    expect([shape.status, sense.status]).toEqual([422, 422]);
    expect(pointers(shape.body)).toEqual([
      '/decidedBy',
      '/kinds',
      '/limits/0/kind',
      '/limits/1/from',
      '/limits/1/plus',
      '/resets/0/act',
      '/takesEffectOn',
      '/vessels/which',
      '/weight',
    ]);
    expect(pointers(sense.body)).toEqual([
      '/kinds/0',
      '/limits/0/plus',
      '/limits/1',
      '/resets',
      '/resets',
      '/takesEffectOn',
      '/vessels/vesselIds/0',
    ]);
  });

  it('takes the example of its own document', async () => {
    const owner = await signedIn('manager');

    expect((await owner.post('/v1/rules', NewOwnRule.meta()?.example)).status).toBe(201);
  });
});

describe('GET /v1/rules', () => {
  it('lists own rules after the published ones, for their organisation only, and tells them apart', async () => {
    const { owner } = await aHose();
    const { body: rule } = await add(owner);
    const stranger = await signedIn();
    const list = async (client: Client, query: string) =>
      (await client.get<RulePage>(`/v1/rules?limit=200&${query}`)).body.items.map(({ id }) => id);

    expect(await list(owner, '')).toEqual([...RULES.map(({ id }) => id), rule.id]);
    expect(await list(owner, 'own=true')).toEqual([rule.id]);
    expect(await list(owner, 'kind=gas_hose&weight=own')).toEqual([rule.id]);
    expect(await list(owner, 'own=false')).toHaveLength(RULES.length);
    expect(await list(stranger, 'own=true')).toEqual([]);
    expect((await stranger.get(`/v1/rules/${rule.id}`)).status).toBe(404);
    expect((await owner.get<Problem>('/v1/rules?own=perhaps')).status).toBe(422);
  });
});

describe('PUT /v1/rules/{ruleId}', () => {
  it('lays down another version from a day on, and what applied before stays known', async () => {
    const { owner, own, workThrough } = await aHose();
    const { body: rule } = await add(owner);
    const quarterly = { takesEffectOn: '2026-09-01', limits: [{ kind: 'interval', from: 'last_done', plus: 'P3M' }] };

    const { status, headers, body } = await change(owner, rule.id, '"1"', quarterly);
    await workThrough();

    expect([status, headers.get('etag'), body.ownRule?.inForce]).toEqual([200, '"2"', 2]);
    expect(body.ownRule?.versions.map(({ number, takesEffectOn }) => [number, takesEffectOn])).toEqual([
      [1, '2026-03-01'],
      [2, '2026-09-01'],
    ]);
    expect((await own())?.dueOn).toBe('2026-05-10');
    expect((await own('?asOf=2026-08-31'))?.dueOn).toBe('2026-03-10');
    expect((await own('?asOf=2026-09-01'))?.dueOn).toBe('2026-05-10');
    expect(await own('?asOf=2026-02-28')).toBeUndefined();
    expect(await own('?asOf=2026-11-20&knownAt=2026-11-25T11:00:00Z')).toBeUndefined();
    const read = await owner.get<Rule>(`/v1/rules/${rule.id}`);
    expect([read.headers.get('etag'), read.body]).toEqual(['"2"', body]);
  });

  it('waits for the day where it lies in the future, and another ETag tells that it was taken up', async () => {
    const { owner, own, workThrough } = await aHose();
    const { body: rule } = await add(owner);
    await workThrough();
    const later = { takesEffectOn: '2026-12-24', weight: 'insurer' };

    const { body } = await change(owner, rule.id, '"1"', later);

    expect(body).toMatchObject({ weight: 'own', ownRule: { version: 2, inForce: 1 } });
    expect(body.ownRule?.versions[1]).not.toHaveProperty('changeId');
    await workThrough();
    expect((await own())?.weight).toBe('own');
    expect((await own('?asOf=2026-12-24'))?.weight).toBe('insurer');
    expect((await own('?asOf=2026-12-23'))?.weight).toBe('own');
    await workThrough(days(29));
    expect((await own())?.weight).toBe('insurer');
    expect((await owner.get<Rule>(`/v1/rules/${rule.id}`)).body).toMatchObject({
      ...{ weight: 'insurer', ownRule: { version: 3, inForce: 2 } },
    });
  });

  it('asks for the version that was read, and leaves published rules as they are', async () => {
    const { owner } = await aHose();
    const { body: rule } = await add(owner);
    const status = async (id: string, headers: Record<string, string>) =>
      (await owner.put(`/v1/rules/${id}`, MONTHLY, headers)).status;

    expect(await status(rule.id, {})).toBe(428);
    expect(await status(rule.id, { 'if-match': '"7"' })).toBe(412);
    expect(await status('raft-solas', { 'if-match': '"1"' })).toBe(409);
    expect(await status('raft-of-the-medusa', { 'if-match': '"1"' })).toBe(404);
    expect(pointers((await change<Problem>(owner, rule.id, '"1"', { resets: [] })).body)).toEqual(['/resets']);
  });
});

describe('POST /v1/rules/{ruleId}/ending', () => {
  it('ends it from a day on; an end that is only planned can be moved, one that has come cannot', async () => {
    const { owner, own, workThrough } = await aHose();
    const { body: rule } = await add(owner);
    const end = (etag: string, more = {}) =>
      owner.post<Rule>(`/v1/rules/${rule.id}/ending`, { ...ENDING, ...more }, { 'if-match': etag });

    expect((await end('"1"', { takesEffectOn: '2027-01-01' })).body.ownRule).toMatchObject({ inForce: 1 });
    const { status, body } = await end('"2"');
    await workThrough();

    expect([status, body.ownRule?.inForce, body.ownRule?.versions.length]).toEqual([200, undefined, 3]);
    expect(body).toMatchObject({ inWords: MONTHLY.inWords, weight: 'own' });
    expect(await own()).toBeUndefined();
    expect((await own('?asOf=2026-11-19'))?.dueOn).toBe('2026-03-10');
    expect((await end('"3"')).status).toBe(409);
    expect((await change(owner, rule.id, '"3"', { takesEffectOn: '2026-11-22' })).body.ownRule?.inForce).toBe(4);
    await workThrough();
    expect((await own())?.dueOn).toBe('2026-03-10');
  });
});

describe('POST /v1/due-dates/explain', () => {
  const ASKED = { kind: 'gas_hose', facts: [{ fact: 'inspected', on: '2026-11-10' }], asOf: '2026-11-25' };
  const { vessels: _, ...stated } = MONTHLY;

  it('takes own rules into account where the request states them, from their day on', async () => {
    const { owner } = await aHose();
    await add(owner);
    const ask = async (more: object) => {
      const { body } = await owner.post<Explained>('/v1/due-dates/explain', { ...ASKED, ...more });
      return body.items.filter(({ scheme }) => scheme === 'own').map(({ ruleId, dueOn }) => [ruleId, dueOn]);
    };

    expect(await ask({})).toEqual([]);
    expect(await ask({ ownRules: [stated] })).toEqual([['own-0', '2026-12-10']]);
    expect(await ask({ ownRules: [{ ...stated, id: 'monthly' }] })).toEqual([['monthly', '2026-12-10']]);
    expect(await ask({ ownRules: [{ ...stated, takesEffectOn: '2026-11-26' }] })).toEqual([]);
  });

  it('names what is wrong with them', async () => {
    const { owner } = await aHose();

    const { body } = await owner.post<Problem>('/v1/due-dates/explain', {
      ...ASKED,
      ownRules: [
        { ...stated, id: 'lpg-hose' },
        { ...stated, resets: [], id: 'a' },
        { ...stated, id: 'a' },
      ],
    });

    expect(pointers(body)).toEqual(['/ownRules/0/id', '/ownRules/1/resets', '/ownRules/2/id']);
  });
});
