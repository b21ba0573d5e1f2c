import { describe, expect, it } from 'vitest';
import type { Fact } from './fact.ts';
import { datesOf, day, fact, owedUnder, type Question } from './facts.test-support.ts';

const serviced = fact('serviced', '2025-11-04', { by: 'liferaft_service_station' });
const raft = (...facts: Fact[]): Question => ({ kind: 'liferaft', schemes: ['solas'], facts: [serviced, ...facts] });
const extended = (until: string, more: Partial<Fact> = {}) =>
  fact('extended', '2026-10-20', { until: day(until), by: 'marine_inspector', ...more });

describe('an extension', () => {
  it('does not count as long as it is not on record', () => {
    expect(datesOf(owedUnder('raft-solas', raft()))).toEqual({
      dueOn: '2026-11-04',
      overdueAfter: '2026-11-04',
      latestPermittedOn: '2027-04-04',
    });
  });

  it('moves the day after which it is overdue, never the due date', () => {
    const raftExtended = owedUnder('raft-solas', raft(extended('2027-01-31')));
    expect(datesOf(raftExtended)).toMatchObject({ dueOn: '2026-11-04', overdueAfter: '2027-01-31' });
    expect(raftExtended.explanation.sentence).toContain('extended on record to 31 January 2027');
  });

  it('reaches no further than the rule lets it', () => {
    const tooLong = owedUnder('raft-solas', raft(extended('2027-12-31')));
    expect(datesOf(tooLong)).toMatchObject({ overdueAfter: '2027-04-04' });
    expect(tooLong.explanation.doubts).toEqual([
      'The extension on record runs to 31 December 2027; the rule lets it go no further than 4 April 2027.',
    ]);
  });

  it('never brings the day forward', () => {
    expect(datesOf(owedUnder('raft-solas', raft(extended('2026-10-31'))))).toMatchObject({
      overdueAfter: '2026-11-04',
    });
  });

  it('ends with the next service, however far it ran', () => {
    const again = fact('serviced', '2026-12-01', { by: 'liferaft_service_station' });
    expect(datesOf(owedUnder('raft-solas', raft(extended('2028-01-31'), again)))).toMatchObject({
      overdueAfter: '2027-12-01',
    });
  });

  it('is not for an owner to give', () => {
    const own = extended('2027-01-31', { doneBy: { capacity: 'owner_or_skipper' } });
    const obligation = owedUnder('raft-solas', raft(own));
    expect(datesOf(obligation)).toMatchObject({ overdueAfter: '2026-11-04' });
    expect(obligation.explanation.setAside).toEqual([
      { factId: own.id, why: 'It was done by the owner or skipper; what counts is a marine inspector or a surveyor.' },
    ]);
  });

  it('is set aside where the rule knows none', () => {
    const question: Question = { ...raft(extended('2027-01-31')), schemes: ['uk_small_commercial'] };
    expect(datesOf(owedUnder('raft-mgn548', question))).toMatchObject({ overdueAfter: '2026-11-04' });
  });
});
