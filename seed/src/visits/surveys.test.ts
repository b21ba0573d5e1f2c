/** What the demo fleets promise of their surveys, from the plans alone. */
import { type Day, parseDay } from '@garboard/domain/calendar/day.ts';
import { describe, expect, it } from 'vitest';
import { CHARTER } from '../fleets/charter.ts';
import { planFleet } from '../fleets/plan-fleet.ts';
import { SCHOOL } from '../fleets/school.ts';
import { YARD } from '../fleets/yard.ts';
import { FATES } from './survey-plan.ts';

const today = parseDay('2026-11-26') as Day;
const surveys = [SCHOOL, YARD, CHARTER]
  .flatMap((book) => planFleet(book, today).vessels)
  .flatMap(({ survey }) => survey ?? []);

describe('the surveys of the demo fleets', () => {
  it('are three to six of each yacht, in order, and none ahead', () => {
    expect(surveys.length).toBeGreaterThan(30);
    for (const { days } of surveys) {
      expect(days.length).toBeGreaterThanOrEqual(3);
      expect(days.length).toBeLessThanOrEqual(6);
      expect([...days].sort((a, b) => a - b)).toEqual(days);
      expect(days.at(-1)).toBeLessThan(today);
    }
  });

  it('have findings of every fate, and some visits that are still being typed up', () => {
    const fates = new Set(surveys.flatMap(({ findings }) => findings.map(({ fate }) => fate)));
    expect([...fates].sort()).toEqual([...new Set(FATES)].sort());
    expect(surveys.some(({ lastIsOpen }) => lastIsOpen)).toBe(true);
  });
});
