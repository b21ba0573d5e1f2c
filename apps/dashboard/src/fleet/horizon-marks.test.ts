import { describe, expect, test } from 'vitest';
import { countShown, countThings, kindsOf, layOut, type Mark } from './horizon-marks.ts';
import { horizonScale } from './horizon-scale.ts';

/** One day is one pixel. */
const scale = horizonScale('2026-11-25', 24, 731);

describe('crowded marks', () => {
  test('a day apart become one stack with a count', () => {
    const [target] = layOut([mark('2027-01-10'), mark('2027-01-11')], scale);
    expect(target?.stacks).toHaveLength(1);
    expect(target?.stacks.map(countShown)).toEqual([2]);
  });

  test('of different kinds on one day are all drawn, and need no count', () => {
    const [target] = layOut([mark('2027-01-10', 'service'), mark('2027-01-10', 'document')], scale);
    expect(target?.stacks.map(kindsOf)).toEqual([
      [
        { kind: 'document', standing: 'in_date' },
        { kind: 'service', standing: 'in_date' },
      ],
    ]);
    expect(target?.stacks.map(countShown)).toEqual([null]);
  });

  test('wide enough apart to be told apart are drawn apart, under one target', () => {
    const all = layOut([mark('2027-01-10'), mark('2027-01-24')], scale);
    expect(all).toHaveLength(1);
    expect(all[0]?.stacks).toHaveLength(2);
  });

  test('are as pressing as the most pressing of them', () => {
    const [target] = layOut([mark('2026-12-20', 'service', 'due'), mark('2026-12-28')], scale);
    expect(target?.stacks.map(kindsOf)).toEqual([[{ kind: 'service', standing: 'due' }]]);
  });
});

test('no target is narrower than a fingertip or lies over the next, and nothing is lost, however crowded', () => {
  const marks = Array.from({ length: 300 }, (_, index) => mark(day(Math.floor((index * 7919) % 720))));
  const all = layOut(marks, scale);
  all.forEach((target, index) => {
    expect(target.width).toBeGreaterThanOrEqual(24);
    const next = all[index + 1];
    if (next) expect(target.left + target.width).toBeLessThanOrEqual(next.left + 1e-9);
  });
  const things = all.flatMap((target) => target.stacks).reduce((sum, stack) => sum + countThings(stack), 0);
  expect(things).toBe(300);
});

test('stacks never touch: a mark is nine pixels wide, and ten more where a count stands beside it', () => {
  const marks = Array.from({ length: 120 }, (_, index) => mark(day((index * 31) % 720)));
  const stacks = layOut(marks, scale).flatMap((target) => target.stacks);
  stacks.slice(1).forEach((stack, index) => {
    const before = stacks[index];
    if (before) expect(stack.x - before.x).toBeGreaterThanOrEqual(countShown(before) === null ? 12 : 19);
  });
});

test('what is past the end of the axis is left off', () => {
  expect(layOut([mark('2029-02-01')], scale)).toEqual([]);
});

function mark(on: string, kind: Mark['mark'] = 'service', standing: Mark['standing'] = 'in_date'): Mark {
  return {
    on,
    mark: kind,
    standing,
    things: [{ itemId: 'i', ruleId: 'r', duty: 'd', label: 'Liferaft', words: 'Service', status: 'read' }],
  };
}

function day(after: number): string {
  return new Date(Date.UTC(2026, 10, 25 + after)).toISOString().slice(0, 10);
}
