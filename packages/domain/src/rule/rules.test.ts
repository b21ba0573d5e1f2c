import { describe, expect, it } from 'vitest';
import { parsePeriod } from '../calendar/period.ts';
import { ATTRIBUTE_IDS } from '../item/attribute.ts';
import { findItemKind, ITEM_KIND_IDS, ITEM_KINDS } from '../item/item-kind.ts';
import type { Interval, Limit, PeriodText, Rule } from './rule.ts';
import { ruleReads } from './rule-reads.ts';
import { findRule, RULES, rulesFor } from './rules.ts';
import { SCHEME_IDS, SCHEMES } from './scheme.ts';

const limitsOf = (rule: Rule): Limit[] =>
  rule.duties.flatMap((duty) => [
    ...duty.limits,
    ...(duty.cappedBy ?? []),
    ...(duty.noLaterThan ?? []),
    ...(duty.fallback ?? []),
  ]);
const intervalsOf = (rule: Rule): Interval[] => [
  ...limitsOf(rule).flatMap((limit) => (limit.kind === 'after' ? [limit.plus] : [])),
  ...rule.duties.flatMap(({ begins }) => (begins ? [begins.plus] : [])),
];

function periodsOf(interval: Interval): PeriodText[] {
  switch (interval.kind) {
    case 'fixed':
      return [interval.period];
    case 'own_figure':
      return interval.otherwise ? [interval.otherwise] : [];
    case 'by_condition':
      return interval.options.map(({ period }) => period);
    case 'by_age':
      return [interval.period, ...interval.bands.flatMap(({ fromAge, period }) => [fromAge, period])];
  }
}

describe('the catalogue', () => {
  it('has each rule once, and each duty once in its rule', () => {
    expect(new Set(RULES.map(({ id }) => id)).size).toBe(RULES.length);
    for (const { id, duties } of RULES)
      expect([id, new Set(duties.map((duty) => duty.id)).size]).toEqual([id, duties.length]);
  });

  it('finds a rule by its id, and none by any other', () => {
    expect(findRule('raft-solas')).toMatchObject({ id: 'raft-solas', scheme: 'solas' });
    expect(findRule('raft')).toBeUndefined();
  });

  it.each(RULES)('$id says who says so, or that nobody does', ({ source, inWords, duties, checks, suspends }) => {
    expect(inWords).toMatch(/^[A-Z].*\.$/s);
    const nobody = source.status === 'common_practice' || source.status === 'memory';
    expect(nobody || source.publication !== null).toBe(true);
    expect(source.status !== 'read' || (source.clause !== null && source.address !== null)).toBe(true);
    expect(duties.length + checks.length + (suspends ? 1 : 0)).toBeGreaterThan(0);
  });

  it.each(RULES)('$id has periods that can be read, the last option without a condition', (rule) => {
    const periods = intervalsOf(rule).flatMap(periodsOf);
    expect(periods.filter((period) => parsePeriod(period) === null)).toEqual([]);
    for (const interval of intervalsOf(rule)) {
      if (interval.kind === 'by_condition') expect(interval.options.at(-1)?.all).toEqual([]);
    }
  });

  it.each(RULES)('$id says of every figure from memory that it is', (rule) => {
    const marked = limitsOf(rule).some(
      (limit) =>
        limit.kind === 'after' &&
        (limit.fromMemory ||
          (limit.plus.kind === 'by_condition' && limit.plus.options.some((option) => option.fromMemory))),
    );
    expect(!marked || rule.source.fromMemory !== undefined || rule.source.status === 'memory').toBe(true);
  });

  it.each(RULES)('$id reads no attribute that none of its kinds has', (rule) => {
    const known = new Set(rule.kinds.flatMap((kind) => findItemKind(kind)?.attributes ?? []));
    expect(ruleReads(rule).attributes.filter((attribute) => !known.has(attribute))).toEqual([]);
  });
});

describe('what applies to a kind', () => {
  it('is every rule of its schemes, in the order of the catalogue', () => {
    expect(rulesFor('gas_hose', []).map(({ id }) => id)).toEqual(['lpg-hose']);
    expect(rulesFor('hand_flare', ['solas', 'us_recreational']).map(({ id }) => id)).toEqual([
      'pyro-us-rec',
      'pyro-us-mfr',
      'pyro-solas',
      'unknown',
    ]);
  });

  it("common practice and the makers' figures, without being chosen", () => {
    expect(SCHEMES.filter(({ always }) => always).map(({ id }) => id)).toEqual(['maker', 'common_practice', 'own']);
    expect(rulesFor('engine_space_extinguisher', []).map(({ id }) => id)).toEqual(['fe-small', 'unknown']);
  });

  it('advice never carries the weight of law', () => {
    const weights = new Set(
      RULES.filter(({ source }) => source.status === 'common_practice').map(({ weight }) => weight),
    );
    expect([...weights].sort()).toEqual(['common_practice', 'insurer', 'maker']);
  });
});

describe('the kinds of item', () => {
  it('each has at least one rule under some scheme', () => {
    expect(ITEM_KIND_IDS.filter((kind) => rulesFor(kind, SCHEME_IDS).length === 0)).toEqual([]);
  });

  it('are listed once each, and every id has its entry', () => {
    expect(ITEM_KINDS.map(({ id }) => id).sort()).toEqual([...ITEM_KIND_IDS].sort());
    expect(findItemKind('liferaft')?.name).toBe('inflatable liferaft');
    expect(findItemKind('anchor')).toBeUndefined();
  });

  it('every attribute belongs to some kind', () => {
    const used = new Set(ITEM_KINDS.flatMap(({ attributes }) => attributes));
    expect(ATTRIBUTE_IDS.filter((id) => !used.has(id))).toEqual([]);
  });

  it.each(ITEM_KINDS)('$id says where each date is found that a rule of its class asks for', ({ id, dates }) => {
    const asked = rulesFor(id, SCHEME_IDS).flatMap((rule) =>
      rule.duties
        .filter(({ onlyFor }) => !onlyFor || onlyFor.includes(id))
        .flatMap(({ limits }) => limits.flatMap(plateOf)),
    );
    expect([...new Set(asked)].filter((fact) => dates[fact] === undefined)).toEqual([]);
  });
});

function plateOf(limit: Limit): ('manufactured' | 'installed' | 'printed_expiry')[] {
  if (limit.kind === 'printed') return ['printed_expiry'];
  if (limit.kind !== 'after' || limit.from === 'last_done' || limit.from === 'first_failed') return [];
  return [limit.from];
}

it('every scheme is described once, and weighs something', () => {
  expect(SCHEMES.map(({ id }) => id).sort()).toEqual([...SCHEME_IDS].sort());
});
