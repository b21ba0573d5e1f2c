/** The horizon is one stop for Tab; inside it the arrow keys go from mark to mark and from vessel to vessel. */
import { type FocusEvent, type KeyboardEvent, useEffect, useRef } from 'react';

const MARKS = 'a.horizon-target';
const STEPS: Record<string, (marks: HTMLElement[], now: HTMLElement) => HTMLElement | undefined> = {
  ArrowRight: (marks, now) => marks[marks.indexOf(now) + 1],
  ArrowLeft: (marks, now) => marks[marks.indexOf(now) - 1],
  ArrowDown: (marks, now) => nearest(marks, now, (top, from) => top > from + 4, 1),
  ArrowUp: (marks, now) => nearest(marks, now, (top, from) => top < from - 4, -1),
  Home: (marks, now) => sameLine(marks, now)[0],
  End: (marks, now) => sameLine(marks, now).at(-1),
};

export function useMarkKeys() {
  const ref = useRef<HTMLDivElement>(null);
  // Rows are drawn as they come near, so marks come and go: one of them is always the stop.
  useEffect(() => {
    const chart = ref.current;
    if (!chart) return;
    const seen = new MutationObserver(() => keepOneStop(chart));
    seen.observe(chart, { childList: true, subtree: true });
    keepOneStop(chart);
    return () => seen.disconnect();
  }, []);
  return { ref, onFocus: keepStop, onKeyDown: step };
}

function keepOneStop(chart: HTMLElement): void {
  const marks = marksIn(chart);
  if (!marks.some((mark) => mark.tabIndex === 0) && marks[0]) marks[0].tabIndex = 0;
}

function step(event: KeyboardEvent<HTMLDivElement>): void {
  const now = event.target;
  const next = STEPS[event.key];
  if (!(now instanceof HTMLElement) || !now.matches(MARKS) || !next) return;
  event.preventDefault();
  next(marksIn(event.currentTarget), now)?.focus();
}

function keepStop(event: FocusEvent<HTMLDivElement>): void {
  if (!event.target.matches(MARKS)) return;
  for (const mark of marksIn(event.currentTarget)) mark.tabIndex = mark === event.target ? 0 : -1;
}

const sameLine = (marks: HTMLElement[], now: HTMLElement) =>
  marks.filter((mark) => mark.closest('li') === now.closest('li'));

const marksIn = (chart: HTMLElement | null) => [...(chart?.querySelectorAll<HTMLElement>(MARKS) ?? [])];

/** In the next line that has marks, the one straightest above or below. */
function nearest(marks: HTMLElement[], now: HTMLElement, beyond: (top: number, from: number) => boolean, way: 1 | -1) {
  const from = now.getBoundingClientRect();
  const places = marks.map((mark) => ({ mark, box: mark.getBoundingClientRect() }));
  const there = places.filter(({ box }) => beyond(box.top, from.top));
  const line = way === 1 ? Math.min(...there.map(({ box }) => box.top)) : Math.max(...there.map(({ box }) => box.top));
  const onLine = there.filter(({ box }) => box.top === line);
  const off = (box: DOMRect) => Math.abs(box.left - from.left);
  return onLine.sort((a, b) => off(a.box) - off(b.box))[0]?.mark;
}
