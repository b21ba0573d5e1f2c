import { expect, it } from 'vitest';
import { fact } from './facts.test-support.ts';
import { factsOnRecord } from './facts-on-record.ts';

const ids = (facts: readonly { id: string }[]) => facts.map(({ id }) => id);

const wrong = fact('serviced', '2025-03-01', { id: 'wrong' });
const right = fact('serviced', '2025-05-01', { id: 'right', corrects: 'wrong', recordedAt: '2025-06-01T12:00:00Z' });
const final = fact('serviced', '2025-05-02', { id: 'final', corrects: 'right', recordedAt: '2025-07-01T12:00:00Z' });

it('strikes out a fact that another one corrects', () => {
  const { held, struckOut } = factsOnRecord([wrong, right]);
  expect([ids(held), ids(struckOut)]).toEqual([['right'], ['wrong']]);
});

it('follows a correction of a correction: only the last holds', () => {
  const { held, struckOut } = factsOnRecord([final, wrong, right]);
  expect([ids(held), ids(struckOut)]).toEqual([['final'], ['wrong', 'right']]);
});

it('knows nothing that was recorded later, corrections included', () => {
  expect(ids(factsOnRecord([wrong, right, final], '2025-06-15T00:00:00Z').held)).toEqual(['right']);
  expect(ids(factsOnRecord([wrong, right, final], '2025-01-01T00:00:00Z').held)).toEqual(['wrong']);
});

it('compares instants, not their text: 13:00+02:00 is before 12:00Z', () => {
  const there = fact('serviced', '2025-03-01', { recordedAt: '2025-06-01T13:00:00+02:00' });
  expect(factsOnRecord([there], '2025-06-01T12:00:00Z').held).toHaveLength(1);
  expect(factsOnRecord([there], '2025-06-01T10:59:59Z').held).toHaveLength(0);
});

it('one that retracts strikes out and says nothing itself', () => {
  const wrong = fact('serviced', '2026-05-04', { id: 'wrong' });
  const never = fact('serviced', '2026-05-04', { id: 'never', corrects: 'wrong', retracts: true });
  const { held, struckOut } = factsOnRecord([wrong, never]);
  expect([held, struckOut]).toEqual([[], [wrong]]);
});
