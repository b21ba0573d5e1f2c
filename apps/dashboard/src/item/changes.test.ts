import { expect, test } from 'vitest';
import { changes } from './changes.ts';
import type { Obligation } from './item.query.ts';

test('what moved comes first, what stayed last', () => {
  const all = changes(
    [obligation('gas', '2028-06-14'), obligation('service', '2026-09-22')],
    [obligation('gas', '2028-06-14'), obligation('service', '2027-11-20')],
  );
  expect(all.map((change) => [change.kind, change.kind !== 'gone' && change.after.duty])).toEqual([
    ['moved', 'service'],
    ['unchanged', 'gas'],
  ]);
});

test('a new standing is a change, though the date is the same', () => {
  const [change] = changes(
    [obligation('service', undefined, 'unknown')],
    [obligation('service', undefined, 'overdue')],
  );
  expect(change?.kind).toBe('moved');
});

test('a window that closes later is a change, though the due day is the same', () => {
  const before = obligation('service', '2026-09-22');
  const [change] = changes([before], [{ ...before, overdueAfter: '2026-12-22' }]);
  expect(change?.kind).toBe('moved');
});

test('duties of one rule are told apart, and what comes or goes is said', () => {
  const all = changes([obligation('service', '2026-09-22')], [obligation('withdraw', '2030-01-01')]);
  expect(all.map((change) => change.kind)).toEqual(['fresh', 'gone']);
});

function obligation(duty: string, dueOn?: string, standing: Obligation['standing'] = 'in_date'): Obligation {
  return {
    ruleId: 'raft',
    duty,
    scheme: 'solas',
    weight: 'law',
    action: { kind: 'service', words: 'Have it serviced' },
    ...(dueOn && { dueOn, overdueAfter: dueOn }),
    windows: [],
    standing,
    explanation: {
      sentence: '',
      source: { publication: null, clause: null, address: null, status: 'common_practice' },
      binds: null,
      alsoCounted: [],
      setAside: [],
      assumed: [],
      doubts: [],
      missing: [],
      wouldChangeIt: [],
    },
  };
}
