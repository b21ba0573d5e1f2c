/** The days are house conventions of `design` and of the organisation: no source. Limits are a rule's own. */
import { describe, expect, it } from 'vitest';
import { type Calendar, dueOfFinding } from './due-of-finding.ts';
import { after, entry, found, STEPS } from './findings.test-support.ts';

const CALENDAR: Calendar = {
  season: { from: '04-01', to: '10-15' },
  haulOuts: ['2026-11-02', '2026-05-01'],
  visits: ['2027-03-01', '2026-08-20'],
  withinWeeksDays: 28,
};
const due = (more = {}, calendar: Partial<Calendar> = {}) => {
  const answer = dueOfFinding(after(found(more)), { ...CALENDAR, ...calendar });
  return answer.kind === 'dated' ? answer.on : answer.kind;
};

describe('the day of an urgency', () => {
  it('is that day before use', () => expect(due({ urgency: 'before_use' })).toBe('2026-06-01'));

  it('is the surveyor’s own, else so many days on', () => {
    expect(due({ urgentBy: '2026-06-12' })).toBe('2026-06-12');
    expect(due()).toBe('2026-06-29');
    expect(due({}, { withinWeeksDays: 14 })).toBe('2026-06-15');
  });

  it('is the season’s end this season, also over the turn of the year', () => {
    expect(due({ urgency: 'this_season' })).toBe('2026-10-15');
    expect(due({ urgency: 'this_season' }, { season: { from: '10-01', to: '03-31' } })).toBe('2027-03-31');
    expect(due({ urgency: 'this_season' }, { season: null })).toBe('undated');
  });

  it('is the next planned haul-out, else the season’s end', () => {
    expect(due({ urgency: 'next_lay_up' })).toBe('2026-11-02');
    expect(due({ urgency: 'next_lay_up' }, { haulOuts: [] })).toBe('2026-10-15');
  });

  it('is the next planned visit to look again, and none where none is planned', () => {
    expect(due({ urgency: 'observe' })).toBe('2026-08-20');
    expect(due({ urgency: 'observe' }, { visits: ['2026-06-01'] })).toBe('undated');
  });
});

describe('a rule’s own limit', () => {
  const limit = { on: '2026-06-10', source: 'SI 2023/1216 reg 20' };

  it('comes first where it is the earlier, and says whose it is', () => {
    expect(dueOfFinding(after(found({ limit })), CALENDAR)).toMatchObject({
      on: '2026-06-10',
      because: 'Set by SI 2023/1216 reg 20.',
    });
    expect(due({ limit, urgency: 'observe' }, { visits: [] })).toBe('2026-06-10');
  });

  it('lengthens nothing', () => expect(due({ limit, urgency: 'before_use' })).toBe('2026-06-01'));
});

it('comes back for its review when it was put off or accepted, and not at all when it has ended', () => {
  const put = dueOfFinding(after(found(), entry(STEPS.defer)), CALENDAR);
  expect(put).toMatchObject({ kind: 'dated', source: 'deferral', on: '2026-09-01' });
  expect(dueOfFinding(after(found(), entry(STEPS.error)), CALENDAR)).toEqual({ kind: 'ended' });
});
