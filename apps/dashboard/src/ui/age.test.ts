import { expect, test } from 'vitest';
import { age, ageInShort, ageInWords } from './age.ts';

test('up to two years an age is told in days, then in whole years gone by', () => {
  expect([1, 64, 730, 731, 4346].map(age)).toEqual(['1 day', '64 days', '730 days', '2 years', '11 years']);
  expect([64, 4346].map(ageInShort)).toEqual(['64 d', '11 y']);
  expect([1, 64, 110, 4346].map(ageInWords)).toEqual(['one day', 'sixty-four days', '110 days', 'eleven years']);
});
