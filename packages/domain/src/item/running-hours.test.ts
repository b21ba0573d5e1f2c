import { describe, expect, it } from 'vitest';
import { formatDay } from '../calendar/day.ts';
import type { Fact } from './fact.ts';
import { day, fact } from './facts.test-support.ts';
import { hourReadings, perDay, projectHours } from './running-hours.ts';

const meter = (on: string, value: number, more: Partial<Fact> = {}): Fact => ({
  ...fact('meter', on, { id: `${on} ${value}`, reading: { value, unit: 'hours' } }),
  ...more,
});

describe('what the meter read', () => {
  const values = (...facts: Fact[]) => hourReadings(facts).map(({ hours }) => hours);

  it('is every reading of hours that stands, in order of day', () => {
    const miles = meter('2026-02-01', 900, { reading: { value: 900, unit: 'sea_miles' } });
    const failed = meter('2026-03-01', 130, { outcome: 'failed' });
    expect(values(meter('2026-01-01', 100), miles, failed, meter('2026-04-01', 140))).toEqual([100, 140]);
  });

  it('begins anew where the meter went back: it was changed', () => {
    expect(values(meter('2026-01-01', 3100), meter('2026-02-01', 2), meter('2026-03-01', 12))).toEqual([2, 12]);
  });

  it('is the higher of two on one day', () => {
    expect(values(meter('2026-01-01', 100), meter('2026-01-01', 104), meter('2026-01-01', 102))).toEqual([104]);
  });
});

describe('the day on which the hours are run', () => {
  const reached = (since: string, hours: number, ...facts: Fact[]) => {
    const projection = projectHours(hourReadings(facts), day(since), hours);
    return projection.kind === 'reached' ? formatDay(projection.on) : projection.kind;
  };
  const anHourADay = [meter('2026-04-01', 500), meter('2026-06-10', 570)];

  it.each([
    ['lies ahead at the rate of the readings', '2026-04-01', 100, '2026-07-10'],
    ['counts from the hours on the day of the act, read between two readings', '2026-05-01', 100, '2026-08-09'],
    ['lies between two readings, where they were reached', '2026-04-01', 50, '2026-05-21'],
    ['is the very day of a reading that shows them', '2026-04-01', 70, '2026-06-10'],
    ['counts from before the first reading at the same rate', '2026-03-22', 100, '2026-06-30'],
    ['counts from after the last reading at the same rate', '2026-06-20', 100, '2026-09-28'],
  ])('%s', (_, since, hours, on) => {
    expect(reached(since, hours, ...anHourADay)).toBe(on);
  });

  it('goes on at the rate of the last year, not of all years', () => {
    const busyOnce = [meter('2022-06-01', 0), meter('2023-06-01', 3650), meter('2024-06-01', 3650)];
    const quiet = [...busyOnce, meter('2025-06-01', 3687), meter('2025-12-01', 3705)];
    const projection = projectHours(hourReadings(quiet), day('2025-12-01'), 10);
    expect(projection.kind === 'reached' && formatDay(projection.rate.from.day)).toBe('2024-06-01');
    expect(projection.kind === 'reached' && Math.round(perDay(projection.rate) * 1000)).toBe(100);
  });

  it('is not told from fewer than two readings', () => {
    expect(reached('2026-04-01', 100)).toBe('too_few_readings');
    expect(reached('2026-04-01', 100, meter('2026-04-01', 500))).toBe('too_few_readings');
  });

  it('is not told of an engine that does not run, or hardly', () => {
    expect(reached('2026-04-01', 100, meter('2026-04-01', 500), meter('2026-08-01', 500))).toBe('hardly_runs');
    expect(reached('2000-04-01', 100, meter('2000-04-01', 500), meter('2026-08-01', 501))).toBe('hardly_runs');
  });
});
