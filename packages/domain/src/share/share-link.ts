/** What may be shown to an outsider by a link, and for how long. */
export type Share = {
  readonly label: string;
  /** `'all'`: the whole fleet's list, vessels that come later too. */
  readonly vesselIds: 'all' | readonly string[];
  /** What the vessels are worth; left out unless somebody says so. */
  readonly showsValue: boolean;
};
export type ShareFault = { readonly at: 'expiresAt' | 'vesselIds'; readonly detail: string };

const DAY_MS = 86_400_000;
/** House convention, no source: nobody remembers what they showed to whom longer than a season and its survey. */
const LONGEST_DAYS = 366;

export function shareFaults({ vesselIds }: Share, expiresAt: Date, now: Date): ShareFault[] {
  const left = expiresAt.getTime() - now.getTime();
  return [
    ...(vesselIds !== 'all' && vesselIds.length === 0
      ? [{ at: 'vesselIds' as const, detail: 'must name at least one vessel' }]
      : []),
    ...(left <= 0 ? [{ at: 'expiresAt' as const, detail: 'must lie ahead' }] : []),
    ...(left > LONGEST_DAYS * DAY_MS
      ? [{ at: 'expiresAt' as const, detail: `must lie within ${LONGEST_DAYS} days` }]
      : []),
  ];
}
