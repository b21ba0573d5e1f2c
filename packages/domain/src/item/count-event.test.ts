import { describe, expect, it } from 'vitest';
import { datesOf, day, fact, held, owed, owedUnder, planned, type Question } from './facts.test-support.ts';

describe('a duty that something triggers', () => {
  const tested = fact('tested', '2026-03-01', { test: 'tightness', by: 'gas_engineer' });
  const gas = (more: Partial<Question>): Question => ({ kind: 'gas_installation', facts: [tested], ...more });
  const changed = held('gas_system_change', '2026-05-10');

  it('is due at once, and says what happened', () => {
    const { outcome, explanation } = owedUnder('lpg-test', gas({ events: [changed] }));
    expect(outcome).toMatchObject({ dueOn: day('2026-05-10'), overdueAfter: day('2026-05-10') });
    expect(explanation.sentence).toMatch(/^A change to the gas system on 10 May 2026, and no tightness test since\./);
    expect(explanation.binds).toMatchObject({ limit: 'at once after a change to the gas system' });
    expect(explanation.alsoCounted).toMatchObject([{ on: day('2027-03-01') }]);
  });

  it.each([
    ['before the last test', [held('gas_system_change', '2026-02-10')]],
    ['on the day of the last test', [held('gas_system_change', '2026-03-01')]],
    ['only planned', [planned('gas_system_change', '2026-05-10')]],
    ['of another kind', [held('gale', '2026-05-10')]],
  ])('is not when it was %s', (_, events) => {
    expect(datesOf(owedUnder('lpg-test', gas({ events })))).toMatchObject({ dueOn: '2027-03-01' });
  });

  it('goes by the first of several, and by facts of the thing itself', () => {
    const repaired = fact('overhauled', '2026-04-20', { by: 'gas_engineer' });
    const { outcome, explanation } = owedUnder('lpg-test', gas({ facts: [tested, repaired], events: [changed] }));
    expect(outcome).toMatchObject({ dueOn: day('2026-04-20') });
    expect(explanation.binds).toMatchObject({ limit: 'at once after it was overhauled', factIds: [repaired.id] });
  });

  it('is not triggered by work that failed', () => {
    const failed = fact('overhauled', '2026-04-20', { outcome: 'failed' });
    expect(datesOf(owedUnder('lpg-test', gas({ facts: [tested, failed] })))).toMatchObject({ dueOn: '2027-03-01' });
  });

  it('does not take the place of a first date that is counted from fitting', () => {
    const compass = (event: string) =>
      owedUnder('compass', {
        kind: 'steering_compass',
        facts: [fact('installed', '2024-05-01')],
        events: [held('alteration', event)],
      });
    expect(datesOf(compass('2026-05-02'))).toMatchObject({ dueOn: '2026-05-01' });
    expect(datesOf(compass('2026-04-30'))).toMatchObject({ dueOn: '2026-04-30' });
  });

  it('that nothing has triggered is not owed at all', () => {
    expect(owed({ kind: 'tonnage_certificate', facts: [fact('installed', '2015-03-01')] })).toEqual([]);
  });
});

describe('a duty counted back from a race', () => {
  const keel = (more: Partial<Question>): Question => ({
    kind: 'keel_and_rudder',
    schemes: ['offshore_racing'],
    facts: [fact('inspected', '2025-03-20', { by: 'surveyor' })],
    ...more,
  });

  it('tells the latest start that is covered, and which race is and which is not', () => {
    const events = [planned('race_start', '2027-03-18'), planned('race_start', '2027-03-25')];
    const { outcome, explanation } = owedUnder('rig-osr', keel({ events }));
    expect(outcome).toMatchObject({ dueOn: day('2027-03-20'), overdueAfter: day('2027-03-20') });
    expect(explanation.sentence).toMatch(
      /^Inspected on 20 March 2025; the race start planned for 18 March 2027 is covered\./,
    );
    expect(explanation.sentence).toMatch(/so the latest start it covers is 20 March 2027\.$/);
    expect(explanation.doubts).toEqual(['The race start planned for 25 March 2027 is not covered by it.']);
  });

  it('covers a start on the last day itself', () => {
    const { explanation } = owedUnder('rig-osr', keel({ events: [planned('race_start', '2027-03-20')] }));
    expect(explanation.doubts).toEqual([]);
    expect(explanation.sentence).toContain('20 March 2027 is covered');
  });

  it('is unknown with neither an inspection nor a race', () => {
    expect(datesOf(owedUnder('rig-osr', keel({ facts: [] })))).toEqual({
      missing: ['the last inspection by a surveyor or a yard or a competent person'],
    });
  });

  it('passes over a race that was sailed', () => {
    const events = [held('race_start', '2026-06-01'), planned('race_start', '2026-08-01')];
    expect(datesOf(owedUnder('rig-osr', keel({ facts: [], events })))).toMatchObject({ dueOn: '2026-07-31' });
  });
});

describe('a period that a surveyor sets', () => {
  const failed = (on: string, until?: string) =>
    fact('inspected', on, { outcome: 'failed', by: 'surveyor', ...(until && { until: day(until) }) });
  const boat = (...facts: Question['facts'] & object): Question => ({
    kind: 'workboat_certificate',
    schemes: ['uk_workboat'],
    facts,
  });

  it('is the last one set', () => {
    const facts = [failed('2026-04-10', '2026-06-30'), failed('2026-06-20', '2026-07-31'), failed('2026-07-01')];
    expect(datesOf(owedUnder('deficient', boat(...facts)))).toMatchObject({ dueOn: '2026-07-31' });
  });

  it('is asked for when none was set', () => {
    const { explanation } = owedUnder('deficient', boat(failed('2026-04-10')));
    expect(explanation.missing).toEqual([
      {
        what: 'the day by which the surveyor wants it put right',
        whereFound:
          "the surveyor's report, or the endorsement on the certificate: enter it with the inspection that did not pass",
      },
    ]);
    expect(explanation.sentence).toMatch(
      /^Inspected on 10 April 2026: not passed; until when it must be put right is not/,
    );
  });

  it('is over once a surveyor passes it, and not before', () => {
    const rules = (...facts: Question['facts'] & object) => owed(boat(...facts)).map(({ ruleId }) => ruleId);
    const set = failed('2026-04-10', '2026-06-30');
    expect(rules(set)).toContain('deficient');
    expect(rules(set, fact('inspected', '2026-05-10', { by: 'yard' }))).toContain('deficient');
    expect(rules(set, fact('inspected', '2026-05-10', { by: 'surveyor' }))).not.toContain('deficient');
  });
});
