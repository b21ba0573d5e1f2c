import { describe, expect, it } from 'vitest';
import { day } from '../item/facts.test-support.ts';
import { override } from './override.test-support.ts';
import { judgeOverride, overrideInForce } from './override.ts';
import type { Interval, Rule } from './rule.ts';
import { findRule } from './rules.ts';

function judge(ruleId: string, dutyId: string, period: string) {
  const rule = findRule(ruleId) as Rule;
  const duty = rule.duties.find(({ id }) => id === dutyId);
  if (!duty) throw new Error(`${ruleId} has no duty ${dutyId}`);
  return judgeOverride(rule, duty, period);
}

/** A law made up for the test, with one interval. */
function judgeUnder(plus: Interval, period: string) {
  const published = findRule('raft-solas') as Rule;
  const [duty] = published.duties;
  if (!duty) throw new Error('no duty');
  return judgeOverride(published, { ...duty, limits: [{ kind: 'after', from: 'last_done', plus }] }, period).kind;
}

describe('a figure of one’s own', () => {
  it.each(['P1D', 'P6M', 'P12M', 'P1Y', 'P365D', 'P52W'])(
    'may tighten a law’s 12 months, or repeat it: %s',
    (period) => {
      expect(judge('raft-solas', 'service', period)).toEqual({ kind: 'accepted' });
    },
  );

  it.each(['P13M', 'P2Y', 'P366D', 'P1Y1D', 'P53W'])('never loosens a law’s 12 months: %s', (period) => {
    expect(judge('raft-solas', 'service', period)).toEqual({
      kind: 'refused',
      at: 'period',
      reason:
        'must not be longer than the 12 months that SOLAS, III/20.8.1 asks for: what binds can be tightened, never loosened',
    });
  });

  it('never loosens a certificate’s terms either', () => {
    expect(judge('raft-mgn548', 'service', 'P13M').kind).toBe('refused');
  });

  it('is held against the shortest that a month, and years about a turn of century, can be', () => {
    const days = (ruleId: string, duty: string, all: number[]) => all.map((n) => judge(ruleId, duty, `P${n}D`).kind);

    expect(days('epirb-month', 'self_test', [28, 29, 31])).toEqual(['accepted', 'refused', 'refused']);
    expect(days('raft-gi', 'gas_inflation_test', [1825, 1826])).toEqual(['accepted', 'refused']);
  });

  it('may be anything sensible in place of advice', () => {
    expect(judge('lpg-hose', 'replacement', 'P10Y')).toEqual({ kind: 'accepted' });
  });

  it.each(['P0D', 'P0M', 'P51Y', 'P99999999999Y', 'a year'])('is a sensible length: not %s', (period) => {
    expect(judge('lpg-hose', 'replacement', period)).toMatchObject({ kind: 'refused', at: 'period' });
  });

  it('stands in for an interval, and where there is none there is nothing to replace', () => {
    expect(judge('bss-re', 're_examination', 'P1M').kind).toBe('accepted');
    expect(judge('cert-mgn280', 'out_of_water', 'P4Y').kind).toBe('accepted');
    const printedOnly = { ...(findRule('raft-solas') as Rule) };
    const [duty] = printedOnly.duties;
    expect(duty && judgeOverride(printedOnly, { ...duty, limits: [{ kind: 'printed' }] }, 'P6M')).toMatchObject({
      kind: 'refused',
      at: 'duty',
    });
  });

  it('is held against the shortest interval that a law’s conditions could give', () => {
    const plus: Interval = {
      kind: 'by_condition',
      options: [
        { period: 'P30M', all: [{ kind: 'younger_than', age: 'P10Y' }] },
        { period: 'P1Y', all: [] },
      ],
    };
    expect([judgeUnder(plus, 'P1Y'), judgeUnder(plus, 'P18M')]).toEqual(['accepted', 'refused']);
  });

  it('is held against the shortest interval that age could give', () => {
    const plus: Interval = { kind: 'by_age', period: 'P30M', bands: [{ fromAge: 'P10Y', period: 'P6M' }] };
    expect([judgeUnder(plus, 'P6M'), judgeUnder(plus, 'P12M')]).toEqual(['accepted', 'refused']);
  });

  it('is held against the published part of an interval that somebody gives', () => {
    const plus: Interval = { kind: 'own_figure', attribute: 'makerIntervalMonths', otherwise: 'P24M' };
    expect([judgeUnder(plus, 'P24M'), judgeUnder(plus, 'P25M')]).toEqual(['accepted', 'refused']);
  });
});

describe('which figure counts', () => {
  const HOSE = { ruleId: 'lpg-hose', duty: 'replacement' };
  const ofVessel = override({ ...HOSE, period: 'P4Y' });
  const ofItem = override({ ...HOSE, period: 'P3Y', itemId: 'hose', from: day('2026-02-01') });
  const periodAt = (all: Parameters<typeof overrideInForce>[0], cut = {}) => overrideInForce(all, HOSE, cut)?.period;

  it('is the item’s own before the vessel’s, whichever is the later', () => {
    expect(periodAt([ofVessel, ofItem])).toBe('P3Y');
    expect(periodAt([ofItem, ofVessel])).toBe('P3Y');
  });

  it('is the latest to take effect, and of two on one day the later entry', () => {
    const newer = override({ ...HOSE, period: 'P2Y', from: day('2026-03-02') });
    const corrected = override({ ...HOSE, period: 'P1Y', from: day('2026-03-02'), recordedAt: '2026-03-03T08:00:00Z' });
    expect(periodAt([newer, ofVessel])).toBe('P2Y');
    expect(periodAt([corrected, newer, ofVessel])).toBe('P1Y');
  });

  it('is only one of that duty of that rule', () => {
    expect(overrideInForce([ofVessel], { ruleId: 'lpg-hose', duty: 'inspection' }, {})).toBeUndefined();
    expect(overrideInForce([ofVessel], { ruleId: 'gas-other', duty: 'replacement' }, {})).toBeUndefined();
  });

  it('counts from its first day on', () => {
    expect(periodAt([ofVessel], { asOf: day('2026-02-28') })).toBeUndefined();
    expect(periodAt([ofVessel], { asOf: day('2026-03-01') })).toBe('P4Y');
  });

  it('was not known before it was recorded', () => {
    expect(periodAt([ofVessel], { asOf: day('2026-04-01'), knownAt: '2026-03-01T07:59:59Z' })).toBeUndefined();
    expect(periodAt([ofVessel], { asOf: day('2026-04-01'), knownAt: '2026-03-01T08:00:00Z' })).toBe('P4Y');
  });

  it('counts no more from the day it ended, as soon as the ending was known', () => {
    const ended = { ...ofVessel, ended: { on: day('2026-06-01'), recordedAt: '2026-06-01T10:00:00Z' } };
    expect(periodAt([ended])).toBeUndefined();
    expect(periodAt([ended], { asOf: day('2026-05-31') })).toBe('P4Y');
    expect(periodAt([ended], { asOf: day('2026-06-01') })).toBeUndefined();
    expect(periodAt([ended], { asOf: day('2026-06-01'), knownAt: '2026-06-01T09:00:00Z' })).toBe('P4Y');
  });
});
