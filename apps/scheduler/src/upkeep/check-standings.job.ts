/** Every night: stored obligations and counts against a recompute from the facts. A difference alarms and is repaired. */
import { recompute } from '@garboard/actions/upkeep/recompute.ts';
import { listOrganisations } from '@garboard/db/organisation/organisations.ts';
import type { Job } from '../job.ts';

export const checkStandings: Job = {
  name: 'check-standings',
  cron: '15 3 * * *',
  async run({ owner, app, log }) {
    for (const organisation of await listOrganisations(owner)) {
      const found = await recompute(app, organisation.id);
      const differs = found.obligations > 0 || found.days > 0;
      log({
        level: differs ? 'error' : 'info',
        message: differs ? 'standings differed and were repaired' : 'standings are right',
        organisationId: organisation.id,
        ...found,
      });
    }
  },
};
