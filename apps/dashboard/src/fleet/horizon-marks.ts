/**
 * Where a vessel's marks are drawn so that none hides another. Marks closer than a mark is wide become one
 * stack, its kinds one above the other and a count beside it; stacks closer than a fingertip share one target.
 */
import type { components } from '@garboard/client/generated/api.d.ts';
import type { Scale } from './horizon-scale.ts';

export type Mark = components['schemas']['HorizonMark'];
export type MarkKind = Mark['mark'];

/** Marks drawn at one place. `x` is the first one's day. */
export type Stack = { readonly x: number; readonly marks: readonly Mark[] };

/** What a pointer hits and the keyboard stops at: one stack or two. */
export type Target = { readonly left: number; readonly width: number; readonly stacks: readonly Stack[] };

/** A mark is 9 px wide; with a count beside it, 18 px. A target is never narrower than 24 px (WCAG 2.2, 2.5.8). */
const MARK = 12;
const MARK_WITH_COUNT = 19;
const TARGET = 24;
const LEAD = 6;

export function layOut(marks: readonly Mark[], scale: Scale): Target[] {
  const shown = marks.filter((mark) => mark.on >= scale.from && mark.on < scale.to);
  return targets(
    stacks(
      [...shown].sort((a, b) => (a.on < b.on ? -1 : 1)),
      scale,
    ),
  );
}

function stacks(marks: readonly Mark[], scale: Scale): Stack[] {
  const all: { x: number; marks: Mark[] }[] = [];
  for (const mark of marks) {
    const x = scale.x(mark.on);
    const last = all.at(-1);
    if (last && x - last.x < reach(last)) last.marks.push(mark);
    else all.push({ x, marks: [mark] });
  }
  return all;
}

const reach = (stack: Stack) => (countShown(stack) === null ? MARK : MARK_WITH_COUNT);

function targets(all: readonly Stack[]): Target[] {
  const groups: Stack[][] = [];
  for (const stack of all) {
    const group = groups.at(-1);
    if (group?.[0] && stack.x - group[0].x < TARGET) group.push(stack);
    else groups.push([stack]);
  }
  return groups.map((group) => target(group));
}

function target(group: readonly Stack[]): Target {
  const first = group[0]?.x ?? 0;
  const last = group.at(-1)?.x ?? first;
  return { left: first - LEAD, width: Math.max(TARGET, last - first + 2 * LEAD), stacks: group };
}

/** The kinds in a stack in a fixed order from the top, each with the most pressing standing among its marks. */
export function kindsOf(stack: Stack): { kind: MarkKind; standing: Mark['standing'] }[] {
  const order: readonly MarkKind[] = ['document', 'replace', 'service'];
  return order.flatMap((kind) => {
    const same = stack.marks.filter((mark) => mark.mark === kind);
    if (same.length === 0) return [];
    return [{ kind, standing: same.some((mark) => mark.standing === 'due') ? ('due' as const) : ('in_date' as const) }];
  });
}

/** How many things a stack stands for, where the marks drawn do not already say it. */
export function countShown(stack: Stack): number | null {
  const things = countThings(stack);
  return things > kindsOf(stack).length ? things : null;
}

export function countThings(stack: Stack): number {
  return stack.marks.reduce((sum, mark) => sum + mark.things.length, 0);
}
