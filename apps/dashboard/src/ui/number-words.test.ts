import { expect, test } from 'vitest';
import { counted, inAList, numberInWords, sentenceCase } from './number-words.ts';

test('numbers are words up to ninety-nine and figures above', () => {
  expect([1, 11, 20, 23, 99].map(numberInWords)).toEqual(['one', 'eleven', 'twenty', 'twenty-three', 'ninety-nine']);
  expect(numberInWords(1204)).toBe('1,204');
});

test('one thing is not "one things"', () => {
  expect(counted(1, 'thing', 'things')).toBe('one thing');
  expect(counted(0, 'thing', 'things')).toBe('no things');
});

test('a list ends with "and"', () => {
  expect(inAList(['Petrel'])).toBe('Petrel');
  expect(inAList(['nine', 'two', 'one'])).toBe('nine, two and one');
  expect(sentenceCase('nine things')).toBe('Nine things');
});
