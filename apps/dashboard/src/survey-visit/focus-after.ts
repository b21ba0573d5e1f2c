/**
 * After a line is written the keys go on: to the next line of the route, from the last one to completing it, or to this one for another of its sort.
 * Asked for before the route is read again: a line that is answered is gone by then.
 */
export function lineAfter(line: HTMLElement | null, moveOn: boolean): HTMLElement | undefined {
  if (!line) return undefined;
  const lines = [...document.querySelectorAll<HTMLElement>('[data-line]')];
  const finish = document.querySelector<HTMLElement>('[data-finish]') ?? undefined;
  return moveOn ? (lines[lines.indexOf(line) + 1] ?? finish) : line;
}

export function focusLine(line: HTMLElement | undefined): void {
  (line?.querySelector<HTMLElement>('input, select') ?? line)?.focus();
  line?.scrollIntoView({ block: 'nearest' });
}
