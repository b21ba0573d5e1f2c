import { describe, expect, it } from 'vitest';
import { addDays, dayOf } from '../../calendar/day.ts';
import { parseRecordedDate, type RecordedDate } from '../../calendar/recorded-date.ts';
import type { Fact } from '../../item/fact.ts';
import type { Obligation } from '../../item/obligation.ts';
import { type ItemHistory, type VesselHistory, workOutObligations } from '../../item/work-out-obligations.ts';
import { countUnconfirmed } from './second-reckoning.ts';

const VESSEL: VesselHistory = { schemes: ['solas'], situations: [], events: [] };

const fact = (id: string, what: Fact['fact'], on: string): Fact => ({
  ...{ id, fact: what, outcome: 'passed', evidence: 'record', recordedAt: '2026-01-01T00:00:00.000Z' },
  on: parseRecordedDate(on) as RecordedDate,
});
const HOSE: ItemHistory = {
  kind: 'gas_hose',
  attributes: {},
  facts: [fact('a', 'manufactured', '2022-03'), fact('b', 'installed', '2022-05-10')],
};
const FLARE: ItemHistory = { kind: 'hand_flare', attributes: {}, facts: [fact('c', 'printed_expiry', '2027-08')] };

const reckoned = (history: ItemHistory, change = (all: readonly Obligation[]) => all) => ({
  history,
  obligations: change(workOutObligations(history, VESSEL)),
});

describe('a second reckoning', () => {
  it('finds every date again where nothing went wrong', () => {
    expect(workOutObligations(HOSE, VESSEL).length).toBeGreaterThan(0);
    expect(countUnconfirmed([reckoned(HOSE), reckoned(FLARE)], VESSEL)).toBe(0);
  });

  it('counts an obligation once whose day is another', () => {
    const aDayLater = ([first, ...others]: readonly Obligation[]) =>
      first?.outcome.kind === 'dated'
        ? [{ ...first, outcome: { ...first.outcome, dueOn: addDays(first.outcome.dueOn, 1) } }, ...others]
        : [];
    expect(countUnconfirmed([reckoned(HOSE, aDayLater), reckoned(FLARE)], VESSEL)).toBe(1);
  });

  it('counts one that was forgotten, and one that nothing asks for', () => {
    const [extra] = workOutObligations(FLARE, VESSEL);
    expect(countUnconfirmed([reckoned(FLARE, () => [])], VESSEL)).toBe(1);
    const doubled = reckoned(HOSE, (all) => (extra ? [...all, extra] : all));
    expect(countUnconfirmed([doubled], VESSEL)).toBe(1);
  });

  it('leaves out what a safety notice asks, which comes from no rule', () => {
    const asked = (all: readonly Obligation[]) => all.map((each) => ({ ...each, ruleId: 'notice:1' }));
    const [first] = workOutObligations(HOSE, VESSEL);
    expect(first?.outcome).toMatchObject({ kind: 'dated', dueOn: dayOf(2027, 3, 31) });
    const both = reckoned(HOSE, (all) => [...all, ...asked(all)]);
    expect(countUnconfirmed([both], VESSEL)).toBe(0);
  });
});
