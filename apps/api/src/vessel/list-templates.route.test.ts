import type { Problem } from '@garboard/contract/problem.ts';
import type { ItemKindPage } from '@garboard/contract/rule/rule.ts';
import type { VesselTemplatePage } from '@garboard/contract/vessel/template.ts';
import { signedIn } from '@garboard/tests/support/api.ts';
import { describe, expect, it } from 'vitest';

describe('GET /v1/vessel-templates', () => {
  it('lists the templates to whoever is signed in, with things that the catalogue has', async () => {
    const viewer = await signedIn('viewer');

    const { body } = await viewer.get<VesselTemplatePage>('/v1/vessel-templates');
    const { body: kinds } = await viewer.get<ItemKindPage>('/v1/item-kinds?limit=200');

    expect(body.items.map(({ id }) => id)).toContain('coastal_cruising_yacht');
    const known = new Set(kinds.items.map(({ id }) => id));
    expect(body.items.flatMap(({ items }) => items).filter(({ kind }) => !known.has(kind))).toEqual([]);
  });

  it('lists them page after page', async () => {
    const viewer = await signedIn('viewer');
    const { body: all } = await viewer.get<VesselTemplatePage>('/v1/vessel-templates');

    const { body: first } = await viewer.get<VesselTemplatePage>('/v1/vessel-templates?limit=4');
    const { body: rest } = await viewer.get<VesselTemplatePage>(
      `/v1/vessel-templates?limit=4&cursor=${first.nextCursor}`,
    );

    expect(first.items).toHaveLength(4);
    expect([...first.items, ...rest.items]).toEqual(all.items);
    expect(rest.nextCursor).toBeNull();
  });

  it('names what it does not know', async () => {
    const viewer = await signedIn('viewer');

    const { status, body } = await viewer.get<Problem>('/v1/vessel-templates?sort=name');

    expect([status, body.errors?.map(({ pointer }) => pointer)]).toEqual([422, ['#query/sort']]);
  });
});
