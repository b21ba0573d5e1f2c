/** How long something that opens a door may be good for. */
export type LifetimeFault = { readonly at: 'expiresAt'; readonly detail: string };

const DAY_MS = 86_400_000;

export function lifetimeFaults(expiresAt: Date, now: Date, longestDays: number): LifetimeFault[] {
  const left = expiresAt.getTime() - now.getTime();
  if (left <= 0) return [{ at: 'expiresAt', detail: 'must lie ahead' }];
  return left <= longestDays * DAY_MS ? [] : [{ at: 'expiresAt', detail: `must lie within ${longestDays} days` }];
}
