import { describe, expect, it } from 'vitest';
import { findItemKind } from '../item/item-kind.ts';
import { VESSEL_TEMPLATES } from './template.ts';

/** What `POST /v1/vessels/{vesselId}/items/batch` takes at once. */
const AT_ONCE = 100;

it('a template has an id of its own', () => {
  expect(new Set(VESSEL_TEMPLATES.map(({ id }) => id)).size).toBe(VESSEL_TEMPLATES.length);
});

describe.each(VESSEL_TEMPLATES)('$id', ({ items, forWhom }) => {
  it('lays out things that the catalogue knows, few enough to be sent at once', () => {
    expect(items.map(({ kind }) => findItemKind(kind)?.id)).toEqual(items.map(({ kind }) => kind));
    expect(items.length).toBeGreaterThan(0);
    expect(items.length).toBeLessThanOrEqual(AT_ONCE);
  });

  it('calls no two of them the same, says where each one is, and how many there are', () => {
    expect(new Set(items.map(({ label }) => label)).size).toBe(items.length);
    expect(items.filter(({ label, zone, quantity }) => !label || !zone || quantity < 1)).toEqual([]);
  });

  it('says in a sentence what boat it is for', () => {
    expect(forWhom).toMatch(/^[A-Z].{20,}\.$/);
  });
});

it('what is dangerous to forget is on the list of every boat with a galley: gas hose, regulator and alarm', () => {
  const withGas = VESSEL_TEMPLATES.filter(({ items }) => items.some(({ kind }) => kind === 'gas_installation'));
  expect(withGas.map(({ id }) => id)).toEqual(['coastal_cruising_yacht', 'charter_yacht', 'inland_motor_cruiser']);
  for (const { items } of withGas) {
    const kinds = items.map(({ kind }) => kind);
    expect(kinds).toEqual(expect.arrayContaining(['gas_hose', 'gas_regulator', 'carbon_monoxide_alarm']));
  }
});
