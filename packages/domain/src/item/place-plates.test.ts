import { expect, it } from 'vitest';
import { formatDay } from '../calendar/day.ts';
import { fact } from './facts.test-support.ts';
import { withPlatesPlaced } from './place-plates.ts';

/** The plates that were placed, as `date on it: day it is taken to have been read`. */
const placed = (...facts: Parameters<typeof withPlatesPlaced>[0]) =>
  withPlatesPlaced(facts).flatMap(({ on, readOn }) =>
    readOn === undefined ? [] : [`${on.text}: ${formatDay(readOn)}`],
  );

it('a thing made before it replaced another is the new one', () => {
  expect(placed(fact('manufactured', '2023-10'), fact('replaced', '2024-03-10'))).toEqual(['2023-10: 2024-03-10']);
});

it('a thing to which something was done before the replacement is the old one', () => {
  const facts = [fact('manufactured', '2018-10'), fact('installed', '2019-01-01'), fact('replaced', '2024-03-10')];
  expect(placed(...facts)).toEqual([]);
});

it('of two plates the later is that of the new one, whatever was done to the old in between', () => {
  const facts = [
    fact('manufactured', '2014-10'),
    fact('installed', '2015-01-01'),
    fact('manufactured', '2023-10'),
    fact('inspected', '2024-01-05'),
    fact('replaced', '2024-03-10'),
  ];
  expect(placed(...facts)).toEqual(['2023-10: 2024-03-10']);
  expect(placed(...facts.toReversed())).toEqual(['2023-10: 2024-03-10']);
});

it('of two printed dates the earlier stood on what was renewed', () => {
  const prints = [fact('printed_expiry', '2026-08'), fact('printed_expiry', '2029-08')];
  expect(placed(...prints, fact('replaced', '2026-03-01'))).toEqual(['2026-08: 2026-02-28']);
  expect(placed(...prints, fact('serviced', '2026-03-01', { test: 'battery' }))).toEqual(['2026-08: 2026-02-28']);
});

it('without a renewal nothing tells, nor does one that did not pass, and what was said stays', () => {
  const prints = [fact('printed_expiry', '2026-08'), fact('printed_expiry', '2029-08')];
  expect(placed(...prints)).toEqual([]);
  expect(placed(...prints, fact('replaced', '2026-03-01', { outcome: 'failed' }))).toEqual([]);
  const read = fact('printed_expiry', '2026-08', { readOn: fact('inspected', '2026-04-01').on.first });
  expect(placed(read, fact('printed_expiry', '2029-08'), fact('replaced', '2026-03-01'))).toEqual([
    '2026-08: 2026-04-01',
  ]);
});
