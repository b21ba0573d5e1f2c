/**
 * Every night: stored obligations, findings and counts against a recompute from the facts and entries; a difference alarms and is repaired.
 * And their days against a second reckoning; there a difference alarms, and is for somebody to look into.
 */
import { recompute } from '@garboard/actions/upkeep/recompute.ts';
import { listOrganisations } from '@garboard/db/organisation/organisations.ts';
import type { Job } from '../job.ts';

export const checkStandings: Job = {
  name: 'check-standings',
  cron: '15 3 * * *',
  async run({ owner, app, log }) {
    for (const organisation of await listOrganisations(owner)) {
      const found = await recompute(app, organisation.id);
      const differs = found.obligations + found.findings + found.days > 0;
      const isWrong = differs || found.unconfirmed > 0;
      log({
        level: isWrong ? 'error' : 'info',
        message: isWrong ? messageOf(differs) : 'standings are right',
        organisationId: organisation.id,
        ...found,
      });
    }
  },
};

const messageOf = (differs: boolean) =>
  differs ? 'standings differed and were repaired' : 'a second reckoning comes to other dates';
