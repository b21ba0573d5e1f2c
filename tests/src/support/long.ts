/**
 * Heavy tests run reduced in `npm test` and in full in `npm run test:long`; both are seeded and both assert the same.
 */
import { appendFileSync } from 'node:fs';

export const long = process.env.LONG === '1';

/** How much of it: `reduced` in every run, `full` in the long one. */
export function size<T>(reduced: T, full: T): T {
  return long ? full : reduced;
}

/** A measured figure, told at the end of the run and kept in docs/long-run.md by the long one. */
export function reportFigure(name: string, value: string | number): void {
  const file = process.env.FIGURES_FILE;
  if (file) appendFileSync(file, `${JSON.stringify({ name, value: String(value) })}\n`);
}
