/** Counting by standing and weight, each weight apart. */
import { COUNTED_AS, type CountedAs } from '@garboard/domain/due-list/standing.ts';
import { WEIGHTS, type Weight } from '@garboard/domain/rule/scheme.ts';
import type { CountedStandings } from './due-entry.ts';

export function countUp(rows: Iterable<{ standing: CountedAs; weight: Weight; n: number }>): CountedStandings {
  const nothing = () => Object.fromEntries(WEIGHTS.map((weight) => [weight, 0])) as Record<Weight, number>;
  const counts = Object.fromEntries(COUNTED_AS.map((standing) => [standing, nothing()])) as Record<
    CountedAs,
    Record<Weight, number>
  >;
  for (const { standing, weight, n } of rows) counts[standing][weight] += n;
  return counts;
}
