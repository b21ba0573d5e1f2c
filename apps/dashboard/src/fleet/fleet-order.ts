/**
 * Who needs somebody first: most to be put right before use, then most out of date by law or certificate, then by anything at all, then the longest,
 * then whoever runs out next. `strings.whyThisOrder` says the same.
 */
import { countAll, countBinding } from '../due-list/counts.ts';
import type { FleetRow } from './fleet.query.ts';

export function inOrderOfNeed(rows: readonly FleetRow[]): FleetRow[] {
  return [...rows].sort(
    (a, b) =>
      b.findings.before_use - a.findings.before_use ||
      binding(b) - binding(a) ||
      overdue(b) - overdue(a) ||
      compare(a.oldestOverdueAfter, b.oldestOverdueAfter) ||
      compare(a.nextOverdueAfter, b.nextOverdueAfter) ||
      a.name.localeCompare(b.name),
  );
}

const binding = (row: FleetRow) => countBinding(row.counts.overdue);
const overdue = (row: FleetRow) => countAll(row.counts.overdue);

/** A vessel without the date comes after those that have one. */
function compare(a: string | undefined, b: string | undefined): number {
  if (a === b) return 0;
  if (a === undefined) return 1;
  if (b === undefined) return -1;
  return a < b ? -1 : 1;
}
