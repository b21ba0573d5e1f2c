import { expect, test } from 'vitest';
import { rulesAnswering } from './find-rules.ts';
import { RULES } from './rules.ts';

const found = (asked: string) => rulesAnswering(RULES, asked).map(({ id }) => id);

test('every word asked begins one of the rule’s, whatever its case and order', () => {
  expect(found('Liferaft SOLAS serv')).toContain('raft-solas');
  expect(found('solas raft-so')).toContain('raft-solas');
  expect(found('solas zebra')).toEqual([]);
});

test('a clause is found as it is written', () => {
  expect(found('III/20.8.1')).toContain('raft-solas');
});

test('no word is no rule, not every rule', () => {
  expect([found(''), found(' – ')]).toEqual([[], []]);
});
