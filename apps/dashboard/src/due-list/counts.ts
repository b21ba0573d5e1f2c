/** Adding up the counts, law and advice apart. */
import type { components } from '@garboard/client/generated/api.d.ts';

export type WeightCounts = components['schemas']['WeightCounts'];
export type StandingCounts = components['schemas']['StandingCounts'];

export function countAll(counts: WeightCounts): number {
  return counts.law + counts.certificate + counts.insurer + counts.maker + counts.common_practice + counts.own;
}

export function countBinding(counts: WeightCounts): number {
  return counts.law + counts.certificate;
}

export function countAdvice(counts: WeightCounts): number {
  return counts.maker + counts.common_practice + counts.own;
}
