import { describe, expect, it } from 'vitest';
import { byPoint } from './by-point.ts';
import type { EvidenceFile } from './evidence.query.ts';

const file = (id: string, zone: string | undefined, takenOn: string, point?: string): EvidenceFile => ({
  ...{ id, vesselId: 'v', kind: 'photograph', mediaType: 'image/jpeg', bytes: 1, sha256: '', takenOn },
  ...{ recordedAt: '2026-11-25T12:00:00Z', recordedBy: 'person:x' },
  ...(zone && { zone }),
  ...(point && { point }),
});

describe('photographs by survey point', () => {
  it('stand side by side where there are several, the oldest first; the rest follows, the latest first', () => {
    const files = [
      file('d', 'fire_gear', '2026-11-01', 'extinguisher'),
      file('c', 'fire_gear', '2026-03-01', 'bracket'),
      file('b', 'papers', '2026-01-01'),
      file('a', 'fire_gear', '2025-11-01', 'extinguisher'),
    ];
    const told = byPoint(files).map(({ zone, points, others }) => [
      zone,
      points.map((each) => [each.point, ...each.files.map(({ id }) => id)]),
      others.map(({ id }) => id),
    ]);
    expect(told).toEqual([
      ['papers and identity', [], ['b']],
      ['fire gear', [['extinguisher', 'a', 'd']], ['c']],
    ]);
  });

  it('of no one place come last', () => {
    expect(
      byPoint([file('x', undefined, '2026-01-01'), file('y', 'sails', '2026-01-01')]).map(({ zone }) => zone),
    ).toEqual(['sails', '']);
  });
});
