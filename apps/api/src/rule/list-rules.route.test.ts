import type { Problem } from '@garboard/contract/problem.ts';
import type { ItemKindPage, Rule, RulePage, SchemePage } from '@garboard/contract/rule/rule.ts';
import { ITEM_KINDS } from '@garboard/domain/item/item-kind.ts';
import { RULES } from '@garboard/domain/rule/rules.ts';
import { SCHEMES } from '@garboard/domain/rule/scheme.ts';
import { signedIn } from '@garboard/tests/support/api.ts';
import { describe, expect, it } from 'vitest';

type Listed = { readonly items: readonly { readonly id: string }[]; readonly nextCursor: string | null };
const ids = (all: readonly { readonly id: string }[]) => all.map(({ id }) => id);

async function everyPage(path: string): Promise<string[]> {
  const viewer = await signedIn('viewer');
  const { body: first } = await viewer.get<Listed>(`${path}?limit=5`);
  const { body: rest } = await viewer.get<Listed>(`${path}?limit=200&cursor=${first.nextCursor}`);
  expect([first.items.length, rest.nextCursor]).toEqual([5, null]);
  return ids([...first.items, ...rest.items]);
}

describe('the catalogue', () => {
  it('gives every rule, kind and scheme once, page after page, to whoever may read', async () => {
    expect(await everyPage('/v1/rules')).toEqual(ids(RULES));
    expect(await everyPage('/v1/item-kinds')).toEqual(ids(ITEM_KINDS));
    expect(await everyPage('/v1/schemes')).toEqual(ids(SCHEMES));
  });

  it('gives each rule its source and what it reads', async () => {
    const viewer = await signedIn('viewer');

    const { body } = await viewer.get<Rule>('/v1/rules/raft-solas');

    expect(body).toMatchObject({
      scheme: 'solas',
      weight: 'law',
      source: { publication: 'SOLAS', clause: 'III/20.8.1', status: 'read' },
    });
    expect(body.reads.facts).toEqual(expect.arrayContaining(['serviced', 'extended']));
    expect(body.duties[0]?.resets).toContainEqual({ act: 'serviced', by: ['liferaft_service_station'] });
  });

  it('says of a rule which attributes and situations it reads, and what each is', async () => {
    const viewer = await signedIn('viewer');

    const { body: oil } = await viewer.get<Rule>('/v1/rules/eng-oil');
    const { body: laidUp } = await viewer.get<Rule>('/v1/rules/us-laidup');

    expect(oil.reads.attributes).toMatchObject([{ name: 'oilChangeHours', type: 'number', is: 'hours' }]);
    expect(laidUp.reads.situations).toEqual(['dismantled', 'use']);
  });

  it('says how the date of each duty comes about, and what is assumed while something is not on record', async () => {
    const viewer = await signedIn('viewer');

    const { body: jacket } = await viewer.get<Rule>('/v1/rules/lj-uk');
    const { body: raft } = await viewer.get<Rule>('/v1/rules/raft-solas');

    expect(jacket.appliesWhen[0]).toContain('while that is not on record, it is taken to apply');
    expect(jacket.duties[0]?.details).toEqual([
      expect.stringContaining('after the last service'),
      'Without that figure: 1 year.',
      expect.stringContaining('counts as done on the day: the next is counted from there'),
    ]);
    expect(raft.duties[0]?.details.join(' ')).toContain('17 months');
    expect(raft.whileNotRecorded.join(' ')).toContain('in what capacity');
  });

  it('tells the meaning of every code that a request under a rule could need', async () => {
    const viewer = await signedIn('viewer');

    const { body } = await viewer.get<RulePage>('/v1/rules?limit=200');

    for (const { id, reads, duties } of body.items) {
      const told = reads.meanings.map(({ code }) => code);
      const capacities = duties.flatMap(({ resets }) => resets.flatMap(({ by }) => by));
      const needed = [...reads.facts, ...reads.tests, ...reads.events, ...reads.situations, ...capacities];
      expect({ id, untold: needed.filter((code) => !told.includes(code)) }).toEqual({ id, untold: [] });
      expect(reads.meanings.every(({ words }) => words.length > 3)).toBe(true);
    }
  });

  it('lists the rules of a scheme, and those for a kind', async () => {
    const viewer = await signedIn('viewer');

    const { body: solas } = await viewer.get<RulePage>('/v1/rules?scheme=solas&limit=200');
    const { body: hoses } = await viewer.get<RulePage>('/v1/rules?kind=gas_hose&limit=200');

    expect(ids(solas.items)).toEqual(ids(RULES.filter(({ scheme }) => scheme === 'solas')));
    expect(ids(hoses.items)).toEqual(ids(RULES.filter(({ kinds }) => kinds.includes('gas_hose'))));
    expect(hoses.items.length).toBeGreaterThan(0);
  });

  it('lists the rules of a weight, also of one scheme, and refuses a weight that is none', async () => {
    const viewer = await signedIn('viewer');

    const { body: insurers } = await viewer.get<RulePage>('/v1/rules?weight=insurer&limit=200');
    const { body: both } = await viewer.get<RulePage>('/v1/rules?weight=law&scheme=solas&limit=200');
    const { status, body } = await viewer.get<Problem>('/v1/rules?weight=heavy');

    expect(ids(insurers.items)).toEqual(ids(RULES.filter(({ weight }) => weight === 'insurer')));
    expect(insurers.items.length).toBeGreaterThan(0);
    expect(ids(both.items)).toEqual(ids(RULES.filter((rule) => rule.weight === 'law' && rule.scheme === 'solas')));
    expect([status, body.errors?.map(({ pointer }) => pointer)]).toEqual([422, ['#query/weight']]);
  });

  it('tells the choices that an attribute has', async () => {
    const viewer = await signedIn('viewer');

    const { body } = await viewer.get<ItemKindPage>('/v1/item-kinds?limit=200');

    const standard = body.items.find(({ id }) => id === 'liferaft')?.attributes.find(({ name }) => name === 'standard');
    expect(standard).toMatchObject({ type: 'string', is: 'choice' });
    expect(standard?.choices?.map(({ value }) => value)).toContain('solas');
  });

  it('says which schemes apply without being chosen', async () => {
    const viewer = await signedIn('viewer');

    const { body } = await viewer.get<SchemePage>('/v1/schemes?limit=200');

    expect(ids(body.items.filter(({ always }) => always))).toEqual(['maker', 'common_practice', 'own']);
  });

  it('knows no rule that is not in it', async () => {
    const viewer = await signedIn('viewer');

    expect((await viewer.get('/v1/rules/raft-of-the-medusa')).status).toBe(404);
  });

  it.each(['/v1/rules', '/v1/item-kinds', '/v1/schemes'])('refuses a bad page of %s', async (path) => {
    const viewer = await signedIn('viewer');

    const { body: limit } = await viewer.get<Problem>(`${path}?limit=0`);
    const { body: cursor } = await viewer.get<Problem>(`${path}?cursor=zz`);

    expect([limit, cursor].map(({ errors }) => errors?.map(({ pointer }) => pointer))).toEqual([
      ['#query/limit'],
      ['#query/cursor'],
    ]);
  });
});
