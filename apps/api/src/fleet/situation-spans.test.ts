import type { SituationRecord } from '@garboard/db/vessel/situations.ts';
import { describe, expect, it } from 'vitest';
import { isAshore, isLaidUp, situationSpans } from './situation-spans.ts';

const from = (day: string, use: SituationRecord['use']): SituationRecord => ({
  id: day,
  from: day,
  place: 'ashore',
  use,
  dismantled: false,
  underRepair: false,
  recordedAt: `${day}T12:00:00Z`,
});
const laidUpSpans = (situations: readonly SituationRecord[], span: typeof YEAR) =>
  situationSpans(situations, isLaidUp, span);
const YEAR = { asOf: '2026-11-25', until: '2027-11-25' };

describe('when a vessel is laid up', () => {
  it('lasts until the day before the next situation that is another', () => {
    const spans = laidUpSpans(
      [from('2026-11-02', 'laid_up'), from('2026-12-01', 'laid_up'), from('2027-04-01', 'in_commission')],
      YEAR,
    );
    expect(spans).toEqual([{ from: '2026-11-02', to: '2027-03-31' }]);
  });

  it('has no end while nothing follows', () => {
    expect(laidUpSpans([from('2026-11-02', 'laid_up')], YEAR)).toEqual([{ from: '2026-11-02', to: null }]);
  });

  it('counts the later entry of one day', () => {
    expect(laidUpSpans([from('2026-12-01', 'laid_up'), from('2026-12-01', 'in_commission')], YEAR)).toEqual([]);
  });

  it('leaves out what ended before the day asked, and keeps what ends on it', () => {
    const ends = (day: string) => laidUpSpans([from('2026-01-01', 'laid_up'), from(day, 'in_commission')], YEAR).length;
    expect([ends('2026-11-25'), ends('2026-11-26')]).toEqual([0, 1]);
  });

  it('leaves out what begins after the horizon, and keeps what begins on it', () => {
    const begins = (day: string) => laidUpSpans([from(day, 'laid_up')], YEAR).length;
    expect([begins('2027-11-25'), begins('2027-11-26')]).toEqual([1, 0]);
  });

  it('is told apart from standing ashore, which can last longer', () => {
    const situations = [from('2026-11-02', 'laid_up'), from('2027-02-01', 'in_commission')];
    expect(situationSpans(situations, isAshore, YEAR)).toEqual([{ from: '2026-11-02', to: null }]);
  });
});
