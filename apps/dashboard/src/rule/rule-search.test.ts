import { expect, test } from 'vitest';
import { answersTo, isNarrowed, readRuleSearch } from './rule-search.ts';
import type { Rule } from './worked-example.ts';

test('an address is read by its known words, and the rest of it is left aside', () => {
  const all = { scheme: 'solas', kind: 'liferaft', weight: 'law' };

  expect(readRuleSearch({ ...all, page: '2' })).toEqual(all);
  expect(readRuleSearch({ scheme: 'navy', kind: '', weight: 'toString' })).toEqual({});
  expect([isNarrowed({}), isNarrowed({ scheme: undefined }), isNarrowed({ kind: 'liferaft' })]).toEqual([
    false,
    false,
    true,
  ]);
});

test('a rule answers only where every word that is given fits', () => {
  const rule = { scheme: 'solas', weight: 'law', kinds: ['liferaft', 'gas_hose'] } as Partial<Rule> as Rule;
  const answers = (search: Parameters<typeof answersTo>[0]) => answersTo(search, rule);

  expect([answers({}), answers({ kind: 'gas_hose', scheme: 'solas', weight: 'law' })]).toEqual([true, true]);
  expect([answers({ kind: 'hull' }), answers({ scheme: 'nfpa10' }), answers({ weight: 'maker' })]).toEqual([
    false,
    false,
    false,
  ]);
});
