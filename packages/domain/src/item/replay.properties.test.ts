/** The explanation, replayed as a computation from the facts it names, gives the same date. */
import { anyItem, anyVessel } from '@garboard/tests/support/any-history.ts';
import { size } from '@garboard/tests/support/long.ts';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addDays, parseDay } from '../calendar/day.ts';
import { fact } from './facts.test-support.ts';
import { replayed } from './replay.test-support.ts';
import { workOutObligations } from './work-out-obligations.ts';

const MINUTE = 60_000;
const OIL = { test: 'oil_and_filter' } as const;
const HISTORIES = size(2000, 40_000);

describe('the explanation of any date', { timeout: 20 * MINUTE }, () => {
  it('replayed as a computation gives the same date, whatever kind of limit bound', () => {
    const forms = new Map<string, number>();
    fc.assert(
      fc.property(anyItem, anyVessel, (item, vessel) => {
        for (const obligation of workOutObligations(item, vessel)) {
          const { outcome, explanation, ruleId, duty } = obligation;
          if (outcome.kind === 'undated' || !explanation.binds) continue;
          const { form, on } = replayed(obligation, item, vessel);
          forms.set(form, (forms.get(form) ?? 0) + 1);
          if (form === 'not_replayed') continue;
          const { limit } = explanation.binds;
          expect({ ruleId, duty, limit, form, on }).toEqual({
            ruleId,
            duty,
            limit,
            form,
            on: outcome.expiresOn ?? outcome.dueOn,
          });
          const base = outcome.expiresOn ?? outcome.windows.at(-1)?.closes ?? outcome.dueOn;
          const extended = item.facts.some(({ fact, until }) => fact === 'extended' && until === outcome.overdueAfter);
          if (!extended) expect(outcome.overdueAfter).toBe(base);
        }
      }),
      { numRuns: HISTORIES, seed: 1854 },
    );
    const certain = ['certificate', 'event', 'named', 'period', 'printed', 'trigger'];
    expect([...forms.keys()]).toEqual(expect.arrayContaining(certain));
    const replays = [...forms.values()].reduce((sum, count) => sum + count, 0);
    expect(forms.get('not_replayed') ?? 0).toBeLessThan(replays / 100);
  });

  it('counts running hours on from the last reading', () => {
    const hours = (on: string, value: number) => fact('meter', on, { reading: { value, unit: 'hours' } });
    const facts = [hours('2024-05-01', 100), hours('2025-05-01', 300), fact('serviced', '2025-06-01', OIL)];
    const item = { kind: 'engine' as const, attributes: { oilChangeHours: 100 }, facts };
    const vessel = { schemes: [], situations: [], events: [] };
    const oil = workOutObligations(item, vessel).find(({ ruleId }) => ruleId === 'eng-oil');
    if (oil?.outcome.kind !== 'dated') throw new Error('no oil change is due');
    expect(replayed(oil, item, vessel)).toEqual({ form: 'hours', on: oil.outcome.dueOn });
  });

  it('a date that is a day off is not what the replay gives', () => {
    const fitted = fact('installed', '2020-03-29');
    const [item, vessel] = [
      { kind: 'gas_regulator' as const, attributes: {}, facts: [fitted] },
      { schemes: [], situations: [], events: [] },
    ];
    const [obligation] = workOutObligations(item, vessel);
    if (!obligation?.explanation.binds) throw new Error('nothing is owed');
    const { on } = replayed(obligation, item, vessel);
    expect(on).toBe(parseDay('2030-03-29'));
    const later = { ...fitted, on: { ...fitted.on, first: addDays(fitted.on.first, -1) } };
    expect(replayed(obligation, { ...item, facts: [later] }, vessel).on).not.toBe(on);
  });
});
