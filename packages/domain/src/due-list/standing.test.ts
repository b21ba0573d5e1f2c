import { describe, expect, it } from 'vitest';
import { type Day, parseDay } from '../calendar/day.ts';
import type { DueOutcome, Explanation } from '../item/obligation.ts';
import { countedAs, standingOn, standsOn } from './standing.ts';

const day = (text: string) => parseDay(text) as Day;
const outcome: DueOutcome = {
  kind: 'dated',
  dueFrom: day('2026-05-31'),
  dueOn: day('2026-06-30'),
  overdueAfter: day('2026-09-30'),
  windows: [],
};

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

it('stays unknown however late it gets', () => {
  expect(standingOn({ kind: 'undated', missing: [] }, day('2099-01-01'))).toBe('unknown');
});

describe('while the duty is suspended', () => {
  const span = { ruleId: 'us-laidup', from: day('2026-09-01'), until: day('2027-03-31') };
  const laidUp = { outcome, explanation: { suspended: [span] } as unknown as Explanation };

  it('it is not overdue, but due before she returns to service', () => {
    expect(standsOn(laidUp, day('2026-10-01'))).toEqual({ standing: 'due', suspended: span });
    expect(standsOn(laidUp, day('2027-04-01'))).toEqual({ standing: 'overdue', suspended: null });
  });

  it('it is counted apart, whatever its date, but what is unknown stays unknown', () => {
    expect([day('2026-08-31'), day('2026-10-01'), day('2027-04-01')].map((on) => countedAs(laidUp, on))).toEqual([
      'due',
      'suspended',
      'overdue',
    ]);
    const undated = { ...laidUp, outcome: { kind: 'undated', missing: [] } } as const;
    expect(countedAs(undated, day('2026-10-01'))).toBe('unknown');
  });
});
