import { expect, it } from 'vitest';
import { dateOnRecord } from './date-on-record.ts';
import { fact } from './facts.test-support.ts';

const manufactured = (...dates: string[]) =>
  dateOnRecord(
    dates.map((on) => fact('manufactured', on)),
    ['manufactured'],
  );

it('is none when nothing that passed is on record', () => {
  expect(manufactured()).toBeNull();
  expect(dateOnRecord([fact('manufactured', '2020', { outcome: 'failed' })], ['manufactured'])).toBeNull();
});

it('takes the more exact of two that agree, without a doubt', () => {
  expect(manufactured('2020', '2020-06', '2020-06-18')).toMatchObject({
    fact: { on: { text: '2020-06-18' } },
    doubts: [],
  });
});

it('takes the earliest of two that do not agree, and says so', () => {
  const found = manufactured('2021-03', '2020-06');
  expect(found?.fact.on.text).toBe('2020-06');
  expect(found?.doubts).toEqual([
    'More than one date of manufacture is on record, in June 2020 and in March 2021: the earlier counts until one is corrected or a replacement is recorded.',
  ]);
});
