/** The demo fleets, and the door to them. */
import { createSignInLink } from '@garboard/actions/organisation/administer.ts';
import { listOrganisations } from '@garboard/db/organisation/organisations.ts';
import type { Db, Pools } from '@garboard/db/pool.ts';
import { DEMO_ORGANISATIONS, seedFleets } from '@garboard/seed/seed-fleets.ts';
import type { Progress } from './progress.ts';

/** A link that nobody used is dead after this. House convention, no source. */
const LINK_MS = 24 * 3_600_000;

/** Only where there is nothing yet. */
export async function seedOnFirstStart(pools: Pools, now: Date, progress: Progress): Promise<void> {
  if ((await listOrganisations(pools.owner)).length > 0) return;
  await progress.step('Laying out three demo fleets', () =>
    seedFleets(pools, now, (line) => progress.say(`  ${line}`)),
  );
}

/** One fresh one-time link for each demo organisation. */
export async function signInLinks(owner: Db, now: Date): Promise<{ name: string; path: string }[]> {
  const demo = (await listOrganisations(owner)).filter(({ name }) => DEMO_ORGANISATIONS.includes(name));
  const expiresAt = new Date(now.getTime() + LINK_MS);
  return Promise.all(
    demo.map(async ({ id, name }) => ({
      name,
      path: `/sign-in/${await createSignInLink(owner, { organisationId: id, role: 'owner', now, expiresAt })}`,
    })),
  );
}
