/** What may be shown to an outsider by a link, and for how long. */
import { type LifetimeFault, lifetimeFaults } from '../organisation/lifetime.ts';
import type { Vessels } from '../organisation/membership.ts';

/**
 * What an outsider may do by it. `look`: nothing but look. `yard`: report the work that it was given, and nothing else.
 * `owner`: see one vessel, and say yes or no to what putting something right may cost.
 */
export const SHARE_PURPOSES = ['look', 'yard', 'owner'] as const;
export type SharePurpose = (typeof SHARE_PURPOSES)[number];

export type Share = {
  readonly purpose: SharePurpose;
  /** Of a yard's link: the work that it was given. */
  readonly findingIds: readonly string[];
  readonly label: string;
  /** `'all'`: the whole fleet's list, vessels that come later too. */
  readonly vesselIds: Vessels;
  /** What the vessels are worth; left out unless somebody says so. */
  readonly showsValue: boolean;
};
export type ShareFault = LifetimeFault | { readonly at: 'vesselIds' | 'findingIds'; readonly detail: string };

/** House convention, no source: nobody remembers what they showed to whom longer than a season and its survey. */
const LONGEST_DAYS = 366;

export function shareFaults(share: Share, expiresAt: Date, now: Date): ShareFault[] {
  const { vesselIds } = share;
  return [
    ...purposeFaults(share),
    ...(vesselIds !== 'all' && vesselIds.length === 0
      ? [{ at: 'vesselIds' as const, detail: 'must name at least one vessel' }]
      : []),
    ...lifetimeFaults(expiresAt, now, LONGEST_DAYS),
  ];
}

function purposeFaults({ purpose, vesselIds, findingIds }: Share): ShareFault[] {
  const work = findingIds.length > 0;
  switch (purpose) {
    case 'look':
      return work ? [{ at: 'findingIds', detail: 'goes with a link for a yard' }] : [];
    case 'yard':
      return work ? [] : [{ at: 'findingIds', detail: 'must name the work that it is given' }];
    case 'owner':
      return [
        ...(work ? [{ at: 'findingIds' as const, detail: 'goes with a link for a yard' }] : []),
        ...(vesselIds === 'all' || vesselIds.length !== 1
          ? [{ at: 'vesselIds' as const, detail: 'must name the one vessel of that owner' }]
          : []),
      ];
  }
}
