/**
 * Month arithmetic against PostgreSQL's own: `date + interval` clamps to the month's end
 * (PostgreSQL documentation, Date/Time Functions and Operators; checked here by running it).
 */
import { addMonths, type Day, dayOf, formatDay } from '@garboard/domain/calendar/day.ts';
import { addPeriod } from '@garboard/domain/calendar/period.ts';
import { sql } from 'kysely';
import { describe, expect, it } from 'vitest';
import { pools } from '../support/database.ts';
import { reportFigure, size } from '../support/long.ts';

const PAIRS = size(1_000_000, 10_000_000);
const CHUNK = 100_000;
const FIRST = dayOf(1900, 1, 1);
const DAYS = dayOf(2200, 1, 1) - FIRST;

/** A small seeded generator (mulberry32): the same pairs in every run. */
function seeded(seed: number): (below: number) => number {
  let state = seed;
  return (below) => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((((t ^ (t >>> 14)) >>> 0) / 4_294_967_296) * below) | 0;
  };
}

describe('adding months', () => {
  it(`gives the day that PostgreSQL gives, for ${PAIRS.toLocaleString('en')} pairs of a day and a number of months`, async () => {
    const random = seeded(1981);
    let differing = 0;
    for (let done = 0; done < PAIRS; done += CHUNK) {
      const pairs = Array.from({ length: CHUNK }, () => [(FIRST + random(DAYS)) as Day, random(481) - 240] as const);
      differing += await differencesIn(
        pairs.map(([day, months]) => ({ day, months, days: 0, sum: addMonths(day, months) })),
      );
    }
    reportFigure('pairs of month arithmetic equal to PostgreSQL', PAIRS);
    expect(differing).toBe(0);
  });

  it('gives the day that PostgreSQL gives when days come on top of months', async () => {
    const random = seeded(2018);
    const sums = Array.from({ length: CHUNK }, () => {
      const day = (FIRST + random(DAYS)) as Day;
      const period = { months: random(241), days: random(400) };
      return { day, ...period, sum: addPeriod(day, period) };
    });
    expect(await differencesIn(sums)).toBe(0);
  });

  it('would notice one wrong day', async () => {
    const day = dayOf(2024, 1, 31);
    expect(await differencesIn([{ day, months: 1, days: 0, sum: dayOf(2024, 3, 1) }])).toBe(1);
    expect(await differencesIn([{ day, months: 1, days: 0, sum: dayOf(2024, 2, 29) }])).toBe(0);
  });
});

type Sum = { readonly day: Day; readonly months: number; readonly days: number; readonly sum: Day };

async function differencesIn(sums: readonly Sum[]): Promise<number> {
  const { rows } = await sql<{ differing: number }>`
    select count(*)::integer as differing
    from unnest(${sums.map(({ day }) => formatDay(day))}::date[], ${sums.map(({ months }) => months)}::integer[],
                ${sums.map(({ days }) => days)}::integer[], ${sums.map(({ sum }) => formatDay(sum))}::date[]) as t (day, months, days, sum)
    where (day + make_interval(months => months, days => days))::date <> sum`.execute(pools.owner);
  return rows[0]?.differing ?? 0;
}
