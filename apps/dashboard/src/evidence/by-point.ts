/** Photographs place by place, and in each the same survey point over the visits apart from all others. */
import { byZone } from '../vessel/zones.ts';
import type { EvidenceFile } from './evidence.query.ts';

export type Point = { readonly point: string; readonly files: readonly EvidenceFile[] };
export type Place = {
  readonly zone: string;
  readonly points: readonly Point[];
  readonly others: readonly EvidenceFile[];
};

/** A point has at least two pictures, the oldest first; what was taken once stands among the others, the latest first. */
export function byPoint(files: readonly EvidenceFile[]): Place[] {
  return byZone(files, ({ zone }) => zone ?? '').map(({ zone, things }) => {
    const named = Map.groupBy(
      things.filter(({ point }) => point !== undefined),
      ({ point }) => point ?? '',
    );
    const points = [...named]
      .filter(([, some]) => some.length > 1)
      .map(([point, some]) => ({ point, files: some.toSorted(byDay) }));
    const shown = new Set(points.flatMap((each) => each.files));
    return { zone, points, others: things.filter((file) => !shown.has(file)) };
  });
}

const byDay = (a: EvidenceFile, b: EvidenceFile) => a.takenOn.localeCompare(b.takenOn) || a.id.localeCompare(b.id);
