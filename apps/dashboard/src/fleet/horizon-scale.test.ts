import { describe, expect, test } from 'vitest';
import { horizonScale, monthBlocks, monthsThatFit, seasonBands, spanOnAxis, weeklyCrowding } from './horizon-scale.ts';

const scale = horizonScale('2026-11-25', 24, 731);

describe('the scale', () => {
  test('runs from the day asked to the same day of the month at the end', () => {
    expect([scale.from, scale.to]).toEqual(['2026-11-25', '2028-11-25']);
    expect(scale.x('2026-11-25')).toBe(0);
    expect(scale.x('2028-11-25')).toBe(731);
  });

  test('gives every day the same width, leap day and clock changes included', () => {
    expect(scale.x('2028-03-01') - scale.x('2028-02-28')).toBeCloseTo(2, 9);
    expect(scale.x('2027-03-29') - scale.x('2027-03-28')).toBeCloseTo(1, 9);
  });
});

describe('the scale bar', () => {
  const blocks = monthBlocks(scale);

  test('starts with what is left of the month and fills the axis without a gap', () => {
    expect(blocks[0]).toEqual({ month: '2026-11', left: 0, width: 6, dark: false });
    const end = blocks.reduce((right, block) => {
      expect(block.left).toBeCloseTo(right, 9);
      return block.left + block.width;
    }, 0);
    expect(end).toBeCloseTo(731, 9);
  });

  test('alternates, and names the year at each January', () => {
    expect(blocks.slice(0, 4).map((block) => block.dark)).toEqual([false, true, false, true]);
    expect(blocks.filter((block) => block.year).map((block) => [block.month, block.year])).toEqual([
      ['2027-01', '2027'],
      ['2028-01', '2028'],
    ]);
  });
});

describe('a laid-up span', () => {
  test('is cut to the axis at both ends', () => {
    expect(spanOnAxis(scale, '2026-10-18', '2026-12-25')).toEqual({ left: 0, width: 30 });
    expect(spanOnAxis(scale, '2028-11-20', null)).toEqual({ left: 726, width: 5 });
  });

  test('that ended before the day asked does not show', () => {
    expect(spanOnAxis(scale, '2025-10-18', '2026-04-01')).toBeNull();
  });
});

describe('the crowding', () => {
  test('counts things by the week from the day asked', () => {
    const weeks = weeklyCrowding(scale, [
      { on: '2026-11-25', count: 1 },
      { on: '2026-12-01', count: 2 },
      { on: '2026-12-02', count: 4 },
    ]);
    expect(weeks.slice(0, 2)).toEqual([3, 4]);
    expect(weeks).toHaveLength(105);
  });

  test('leaves out what is off the axis', () => {
    const weeks = weeklyCrowding(scale, [
      { on: '2026-11-24', count: 1 },
      { on: '2029-01-01', count: 1 },
    ]);
    expect(weeks.every((count) => count === 0)).toBe(true);
  });
});

test('a phone shows six months, a tablet a year, a desk two years', () => {
  expect([360, 460, 840].map(monthsThatFit)).toEqual([6, 12, 24]);
});

test('a season is a band in each year that it touches, cut at the edges', () => {
  const scale = horizonScale('2026-11-25', 24, 731);
  const bands = seasonBands(scale, { from: '04-01', to: '10-15' });
  expect(bands.map(({ year }) => year)).toEqual(['2027', '2028']);
  expect(bands[0]).toMatchObject({ left: scale.x('2027-04-01'), width: scale.x('2027-10-16') - scale.x('2027-04-01') });
});

test('a season that runs over the turn of the year is one band, named by the year in which it begins', () => {
  const scale = horizonScale('2026-12-10', 12, 365);
  const bands = seasonBands(scale, { from: '11-01', to: '03-31' });
  expect(bands.map(({ year, left }) => [year, left])).toEqual([
    ['2026', 0],
    ['2027', scale.x('2027-11-01')],
  ]);
});

test('where no season is said none is drawn', () => {
  expect(seasonBands(horizonScale('2026-12-10', 12, 365), null)).toEqual([]);
});
