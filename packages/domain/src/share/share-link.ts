/** What may be shown to an outsider by a link, and for how long. */
import { type LifetimeFault, lifetimeFaults } from '../organisation/lifetime.ts';
import type { Vessels } from '../organisation/membership.ts';

export type Share = {
  readonly label: string;
  /** `'all'`: the whole fleet's list, vessels that come later too. */
  readonly vesselIds: Vessels;
  /** What the vessels are worth; left out unless somebody says so. */
  readonly showsValue: boolean;
};
export type ShareFault = LifetimeFault | { readonly at: 'vesselIds'; readonly detail: string };

/** House convention, no source: nobody remembers what they showed to whom longer than a season and its survey. */
const LONGEST_DAYS = 366;

export function shareFaults({ vesselIds }: Share, expiresAt: Date, now: Date): ShareFault[] {
  return [
    ...(vesselIds !== 'all' && vesselIds.length === 0
      ? [{ at: 'vesselIds' as const, detail: 'must name at least one vessel' }]
      : []),
    ...lifetimeFaults(expiresAt, now, LONGEST_DAYS),
  ];
}
