/** The demo fleets, and the door to them. */
import { randomUUID } from 'node:crypto';
import { createSignInLink } from '@garboard/actions/organisation/administer.ts';
import { renameOrganisations } from '@garboard/actions/organisation/rename-organisations.ts';
import { listOwners } from '@garboard/db/organisation/memberships.ts';
import { listOrganisations, type OrganisationRecord } from '@garboard/db/organisation/organisations.ts';
import type { Pools } from '@garboard/db/pool.ts';
import { inOrganisation, wholeFleet } from '@garboard/db/scope.ts';
import { DEMO_ORGANISATIONS, type Ground, seedFleets } from '@garboard/seed/seed-fleets.ts';
import { seedPeople } from '@garboard/seed/seed-people.ts';
import type { Progress } from './progress.ts';

/** A link that nobody used is dead after this. House convention, no source. */
const LINK_MS = 24 * 3_600_000;

/** Carried by the fleets until they are complete: a start that was broken off leaves no half fleet under its name. */
const UNFINISHED = ' (not laid out to the end, ';

/** Only where there is nothing yet but what an earlier start left unfinished. */
export async function seedOnFirstStart(
  ground: Ground,
  now: Date,
  progress: Progress,
  asked?: AbortSignal,
): Promise<void> {
  const there = await listOrganisations(ground.pools.owner);
  if (there.some(({ name }) => !name.includes(UNFINISHED))) return;
  await progress.step('Laying out three demo fleets', () =>
    layOutFleets(ground, now, (line) => progress.say(`  ${line}`), asked),
  );
}

async function layOutFleets(
  ground: Ground,
  now: Date,
  say: (line: string) => void,
  asked?: AbortSignal,
): Promise<void> {
  const { pools } = ground;
  const suffix = `${UNFINISHED}${randomUUID()})`;
  await seedFleets(ground, now, (line) => say(line.replace(suffix, '')), suffix, asked);
  const laidOut = (await listOrganisations(pools.owner)).filter(({ name }) => name.endsWith(suffix));
  const renamings = laidOut.map((organisation) => ({ organisation, name: organisation.name.slice(0, -suffix.length) }));
  for (const { organisation, name } of renamings) await seedPeople(pools.owner, organisation, name, now);
  await renameOrganisations(pools.owner, renamings, now);
}

/** One fresh one-time link for each demo organisation. */
export async function signInLinks(pools: Pools, now: Date): Promise<{ name: string; path: string }[]> {
  const demo = (await listOrganisations(pools.owner)).filter(({ name }) => DEMO_ORGANISATIONS.includes(name));
  const expiresAt = new Date(now.getTime() + LINK_MS);
  return Promise.all(
    demo.map(async (organisation) => {
      const link = { organisationId: organisation.id, personId: await ownerOf(pools, organisation, now) };
      const token = await createSignInLink(pools.owner, { ...link, now, expiresAt });
      return { name: organisation.name, path: `/sign-in/${token}` };
    }),
  );
}

/**
 * Fleets of an earlier version have nobody yet. Asked as the application: the role that owns the tables may see every
 * organisation's people.
 */
async function ownerOf({ app, owner }: Pools, organisation: OrganisationRecord, now: Date): Promise<string> {
  const owners = () => inOrganisation(app, wholeFleet(organisation.id), listOwners);
  const [first] = await owners();
  if (first) return first;
  await seedPeople(owner, organisation, organisation.name, now);
  return (await owners())[0] ?? '';
}
