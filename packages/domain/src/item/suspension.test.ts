import { describe, expect, it } from 'vitest';
import { formatDay } from '../calendar/day.ts';
import type { Suspension } from '../rule/rule.ts';
import { datesOf, day, fact, owedUnder, type Question, situation } from './facts.test-support.ts';
import { suspendedOn, suspendedSpans } from './suspension.ts';

const LAID_UP: Suspension = { use: 'laid_up', dismantled: true, inWords: 'while she is laid up' };
const out = situation('2026-04-01', { use: 'in_commission', dismantled: false, place: 'afloat' });

describe('the spans of a suspension', () => {
  const spans = (
    ...[situations, cut = {}]: [Parameters<typeof suspendedSpans>[1], Parameters<typeof suspendedSpans>[2]?]
  ) => suspendedSpans(LAID_UP, situations, cut).map(({ from, until }) => [formatDay(from), until && formatDay(until)]);

  it('run from the day she is so to the day before she is not', () => {
    expect(spans([out, situation('2025-11-02')])).toEqual([['2025-11-02', '2026-03-31']]);
  });

  it('stay open while nothing ends them', () => {
    expect(spans([situation('2025-11-02'), out, situation('2026-10-20')])).toEqual([
      ['2025-11-02', '2026-03-31'],
      ['2026-10-20', null],
    ]);
  });

  it('go through one that changes nothing that matters', () => {
    expect(spans([situation('2025-11-02'), situation('2025-12-01', { underRepair: true }), out])).toEqual([
      ['2025-11-02', '2026-03-31'],
    ]);
  });

  it.each([
    ['laid up with her gear aboard', { dismantled: false }],
    ['dismantled in commission', { use: 'in_commission' }],
    ['dismantled and out of service, but not said to be laid up', { use: 'out_of_service' }],
  ] as const)('are none when she is %s', (_, more) => {
    expect(spans([situation('2025-11-02', more)])).toEqual([]);
  });

  it('take the later entry of two on one day, in whatever order they come', () => {
    const mistyped = situation('2025-11-02', { id: 'b', dismantled: false, recordedAt: '2025-11-03T08:00:00Z' });
    const first = situation('2025-11-02', { id: 'a', recordedAt: '2025-11-02T08:00:00Z' });
    expect(spans([mistyped, first])).toEqual([]);
    expect(spans([first, mistyped])).toEqual([]);
  });

  it('are those known at the instant: what begins or ends after the day was planned on it', () => {
    const told = situation('2025-11-02', { recordedAt: '2025-12-24T08:00:00Z' });
    expect(spans([told], { asOf: day('2025-11-01') })).toEqual([['2025-11-02', null]]);
    expect(
      suspendedOn({ suspended: [{ ruleId: 'us-laidup', from: day('2025-11-02'), until: null }] }, day('2025-11-01')),
    ).toBeNull();
    expect(spans([told], { knownAt: '2025-12-01T00:00:00Z' })).toEqual([]);
    expect(spans([told, out], { asOf: day('2026-02-01') })).toEqual([['2025-11-02', '2026-03-31']]);
  });
});

describe('a duty of a sailing school vessel', () => {
  const flares = (more: Partial<Question>): Question => ({
    kind: 'hand_flare',
    schemes: ['us_sailing_school', 'us_recreational'],
    facts: [fact('printed_expiry', '2026-01')],
    ...more,
  });

  it('keeps its dates while it is suspended, and says what holds', () => {
    const suspended = owedUnder('pyro-us-school', flares({ situations: [situation('2025-11-02')] }));
    expect(datesOf(suspended)).toEqual(datesOf(owedUnder('pyro-us-school', flares({}))));
    expect(suspended.explanation.suspended).toEqual([{ ruleId: 'us-laidup', from: day('2025-11-02'), until: null }]);
    expect(suspended.explanation.sentence).toMatch(
      /Suspended from 2 November 2025 while she is laid up, dismantled and out of service \(46 CFR 169\.103\(b\)\(2\)\): the clock runs on, and it must be done before she returns to service\.$/,
    );
  });

  it('says when it was, once she is back', () => {
    const { explanation } = owedUnder('pyro-us-school', flares({ situations: [situation('2025-11-02'), out] }));
    expect(explanation.sentence).toContain('Suspended from 2 November 2025 to 31 March 2026 while');
  });

  it('alone is suspended: the same flares under another scheme are not', () => {
    const question = flares({ situations: [situation('2025-11-02')] });
    expect(owedUnder('pyro-us-rec', question).explanation).not.toHaveProperty('suspended');
    const outside = { ...question, schemes: ['us_recreational'] as const };
    expect(owedUnder('pyro-us-rec', outside).explanation).not.toHaveProperty('suspended');
  });

  it('is suspended on a day inside the span, both ends included', () => {
    const { explanation } = owedUnder('pyro-us-school', flares({ situations: [situation('2025-11-02'), out] }));
    const on = (text: string) => suspendedOn(explanation, day(text))?.ruleId ?? null;
    expect(['2025-11-01', '2025-11-02', '2026-03-31', '2026-04-01'].map(on)).toEqual([
      null,
      'us-laidup',
      'us-laidup',
      null,
    ]);
  });
});
