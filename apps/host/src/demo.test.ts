import { migrate } from '@garboard/db/migrate.ts';
import { listOwners } from '@garboard/db/organisation/memberships.ts';
import { listOrganisations } from '@garboard/db/organisation/organisations.ts';
import { openPools } from '@garboard/db/pool.ts';
import { inOrganisation, wholeFleet } from '@garboard/db/scope.ts';
import { DEMO_ORGANISATIONS } from '@garboard/seed/seed-fleets.ts';
import { freshDatabase } from '@garboard/tests/support/database.ts';
import { NOW } from '@garboard/tests/support/organisation.ts';
import { describe, expect, it, onTestFinished } from 'vitest';
import { files } from '../../../tests/src/support/files.ts';
import { seedOnFirstStart, signInLinks } from './demo.ts';
import type { Progress } from './progress.ts';

const silent: Progress = { step: (_, work) => work(), say: () => {} };

async function anEmptyDatabase() {
  const database = await freshDatabase();
  const pools = openPools({ url: database.url });
  onTestFinished(() => pools.close());
  await migrate(pools.owner);
  const names = async () => (await listOrganisations(pools.owner)).map(({ name }) => name);
  return { pools, names };
}

/** Breaks off at the first line that says a fleet is complete, as a killed start would. */
const brokenOff: Progress = {
  step: (_, work) => work(),
  say: () => {
    throw new Error('broken off');
  },
};

describe('the demo fleets', { timeout: 300_000 }, () => {
  it('are laid out once, anew after a start that was broken off, and never among other organisations', async () => {
    const { pools, names } = await anEmptyDatabase();
    // One fleet is enough to break off at.
    const one = { pools, files, only: ['Wrackholm Yachts'] };
    await expect(seedOnFirstStart(one, NOW, brokenOff)).rejects.toThrow('broken off');
    const unfinished = await names();
    expect(unfinished.filter((name) => DEMO_ORGANISATIONS.includes(name))).toEqual([]);

    await seedOnFirstStart({ pools, files }, NOW, silent);
    const complete = await names();
    expect(complete.filter((name) => DEMO_ORGANISATIONS.includes(name)).sort()).toEqual([...DEMO_ORGANISATIONS].sort());

    await seedOnFirstStart({ pools, files }, NOW, silent);
    expect(await names()).toEqual(complete);
    const links = await signInLinks(pools, NOW);
    expect(links.map(({ name }) => name).sort()).toEqual([...DEMO_ORGANISATIONS].sort());
    const organisations = (await listOrganisations(pools.owner)).filter(({ name }) =>
      DEMO_ORGANISATIONS.includes(name),
    );
    for (const { id, name } of organisations) {
      const signingIn = await inOrganisation(pools.app, wholeFleet(id), async (tx) => {
        const owners = await listOwners(tx);
        const links = await tx.selectFrom('sign_in_link').select('person_id').execute();
        return links.map(({ person_id }) => owners.includes(person_id));
      });
      expect(signingIn, `each link to ${name} is of an owner there`).toEqual([true]);
    }
  });
});
