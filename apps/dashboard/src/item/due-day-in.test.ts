import { expect, test } from 'vitest';
import { dueDayIn } from './due-day-in.ts';

const before = (sentence: string, dueOn: string) => {
  const day = dueDayIn(sentence, dueOn);
  return day && sentence.slice(0, day.at);
};

test('the day is the one that the sentence comes to, not the same day among its grounds', () => {
  const printed =
    'Printed to run out on 31 May 2026. A signal is good until then, so it is out of date after 31 May 2026.';
  expect(before(printed, '2026-05-31')?.endsWith('out of date after ')).toBe(true);
});

test('and not the same day told after it, as of what was published or suspended', () => {
  const own =
    'Fitted on 1 May 2024. By the own figure 4 years, so it is due by 1 May 2028. Published: 4 years, which leads to 1 May 2028.';
  expect(before(own, '2028-05-01')?.endsWith('so it is due by ')).toBe(true);
});

test('a sentence that does not name the day has none', () => {
  expect(dueDayIn('The date is not known.', '2028-05-01')).toBeNull();
});
