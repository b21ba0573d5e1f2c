import { describe, expect, it } from 'vitest';
import { formatDay } from '../calendar/day.ts';
import type { Counting, Interval } from '../rule/rule.ts';
import type { Attributes } from './attribute.ts';
import { countInterval } from './count-interval.ts';
import { day, recorded } from './facts.test-support.ts';
import type { Particulars } from './weigh-condition.ts';

const raft = (attributes: Attributes = {}, made?: string): Particulars => ({
  kind: 'liferaft',
  attributes,
  manufactured: made === undefined ? null : recorded(made),
});

function reached(interval: Interval, from: string, of = raft(), counting: Counting = 'days') {
  const result = countInterval(interval, day(from), counting, of);
  return result.kind === 'counted' ? { ...result, on: formatDay(result.on) } : result;
}

describe('a fixed interval', () => {
  const life = (period: `P${string}`): Interval => ({ kind: 'fixed', period });

  it('is counted to the day, clamped to the end of the month', () => {
    expect(reached(life('P17M'), '2025-09-30')).toMatchObject({ on: '2027-02-28', period: 'P17M' });
  });

  it('ends the day before where the period begins with the day', () => {
    expect(reached(life('P15M'), '2024-05-20', raft(), 'beginning_with')).toMatchObject({ on: '2025-08-19' });
    expect(reached(life('P1M'), '2024-03-31', raft(), 'beginning_with')).toMatchObject({ on: '2024-04-30' });
  });

  it('ends with the month where the rule works in whole months', () => {
    expect(reached(life('P4Y'), '2022-05-01', raft(), 'whole_months')).toMatchObject({ on: '2026-05-31' });
    expect(reached(life('P4Y'), '2022-05-15', raft(), 'whole_months')).toMatchObject({ on: '2026-05-31' });
  });

  it('ends with the year where the rule works in whole years', () => {
    expect(reached(life('P12Y'), '2014-01-01', raft(), 'whole_years')).toMatchObject({ on: '2026-12-31' });
  });
});

describe("somebody's own figure", () => {
  const makers: Interval = { kind: 'own_figure', attribute: 'makerIntervalMonths' };
  const insurers: Interval = { kind: 'own_figure', attribute: 'insurerLifeMonths', otherwise: 'P10Y' };

  it('is counted when it is on record', () => {
    expect(reached(makers, '2025-05-01', raft({ makerIntervalMonths: 36 }))).toMatchObject({ on: '2028-05-01' });
  });

  it('is missing when it is not, rather than made up', () => {
    expect(reached(makers, '2025-05-01')).toMatchObject({
      kind: 'missing',
      missing: { what: "maker's interval" },
    });
  });

  it.each([0, -12, 1.5, '36', true])('is missing when it is %j', (value) => {
    expect(reached(makers, '2025-05-01', raft({ makerIntervalMonths: value })).kind).toBe('missing');
  });

  it('gives way to the usual figure where the rule has one, and says so', () => {
    expect(reached(insurers, '2015-05-01')).toMatchObject({
      on: '2025-05-01',
      assumed: [expect.stringContaining('10 years')],
    });
    expect(reached(insurers, '2015-05-01', raft({ insurerLifeMonths: 144 }))).toMatchObject({
      on: '2027-05-01',
      assumed: [],
    });
  });
});

describe('an interval that depends on conditions', () => {
  const interval: Interval = {
    kind: 'by_condition',
    options: [
      {
        period: 'P2Y',
        all: [
          { kind: 'attribute_below', attribute: 'seasonMonths', below: 7 },
          { kind: 'younger_than', age: 'P15Y' },
          { kind: 'valid_through_next', attribute: 'cylinderTestValidTo' },
        ],
      },
      { period: 'P1Y', all: [] },
    ],
  };
  const all = { seasonMonths: 6, cylinderTestValidTo: '2028-04-01' };

  it('is the longer one while every condition holds on the day that it leads to', () => {
    expect(reached(interval, '2026-04-01', raft(all, '2014-05-01'))).toMatchObject({
      on: '2028-04-01',
      alternatives: [],
    });
  });

  it.each([
    ['seven months are not fewer than seven', { ...all, seasonMonths: 7 }, '2014-05-01'],
    ['the cylinder test runs out the day before', { ...all, cylinderTestValidTo: '2028-03-31' }, '2014-05-01'],
    ['it is 15 years old on the day it would lead to', all, '2013-04-01'],
    ['it is past 15 years already', all, '2011-03-01'],
  ])('is the shorter one when %s, and shows the other', (_, attributes, made) => {
    expect(reached(interval, '2026-04-01', raft(attributes, made))).toMatchObject({
      on: '2027-04-01',
      assumed: [],
      alternatives: [{ on: day('2028-04-01') }],
    });
  });

  it('is the longer one on the last day before 15 years', () => {
    expect(reached(interval, '2026-04-01', raft(all, '2013-04-02'))).toMatchObject({ on: '2028-04-01' });
  });

  it('is the shorter one when something is not on record, and says what would lengthen it', () => {
    expect(reached(interval, '2026-04-01', raft({ seasonMonths: 6 }, '2014-05-01'))).toMatchObject({
      on: '2027-04-01',
      assumed: [expect.stringContaining("day to which the gas cylinder's hydrostatic test is valid")],
      alternatives: [],
    });
  });
});

describe('an interval that shortens with age', () => {
  const interval: Interval = { kind: 'by_age', period: 'P30M', bands: [{ fromAge: 'P10Y', period: 'P12M' }] };

  it.each([
    ['2018-01-10', '2020-07-10', 'young: the long interval'],
    ['2023-01-10', '2025-06-20', 'it reaches ten years first, and by then twelve months have passed'],
    ['2024-12-01', '2025-12-01', 'twelve months end after its tenth birthday'],
    ['2026-03-01', '2027-03-01', 'past ten years: the short interval'],
  ])('made on 20 June 2015 and serviced on %s it is due on %s (%s)', (from, on) => {
    expect(reached(interval, from, raft({}, '2015-06-20'))).toMatchObject({ on, assumed: [] });
  });

  it('is the shortest when the age is not known, and says so', () => {
    expect(reached(interval, '2026-03-01')).toMatchObject({
      on: '2027-03-01',
      assumed: [expect.stringContaining('shortest')],
    });
  });
});
