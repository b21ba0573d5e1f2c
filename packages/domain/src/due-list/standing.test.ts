import { expect, it } from 'vitest';
import { type Day, parseDay } from '../calendar/day.ts';
import type { DueOutcome } from '../item/obligation.ts';
import { standingOn } from './standing.ts';

const day = (text: string) => parseDay(text) as Day;
const outcome: DueOutcome = { kind: 'dated', dueOn: day('2026-06-30'), overdueAfter: day('2026-09-30'), windows: [] };

it.each([
  ['2026-05-30', 'in_date', '31 days ahead'],
  ['2026-05-31', 'due', '30 days ahead'],
  ['2026-06-30', 'due', 'the due day itself'],
  ['2026-07-01', 'due', 'past it, inside the window'],
  ['2026-09-30', 'due', 'the last day on which nothing is wrong'],
  ['2026-10-01', 'overdue', 'the day after'],
])('on %s it is %s (%s)', (text, standing) => {
  expect(standingOn(outcome, day(text))).toBe(standing);
});

it('can be given another lead time', () => {
  expect(standingOn(outcome, day('2026-06-29'), 0)).toBe('in_date');
  expect(standingOn(outcome, day('2026-06-30'), 0)).toBe('due');
});

it('stays unknown however late it gets', () => {
  expect(standingOn({ kind: 'undated', missing: [] }, day('2099-01-01'))).toBe('unknown');
});
