/** Every hour: sessions that ended and keys of old requests are forgotten. */
import { forget } from '@garboard/actions/upkeep/forget.ts';
import { listOrganisations } from '@garboard/db/organisation/organisations.ts';
import type { Job } from '../job.ts';

export const forgetRunOut: Job = {
  name: 'forget-run-out',
  cron: '40 * * * *',
  async run({ owner, app, now, log }) {
    for (const organisation of await listOrganisations(owner)) {
      const forgotten = await forget(app, organisation.id, now());
      if (forgotten.keys + forgotten.sessions > 0)
        log({ level: 'info', message: 'forgot', organisationId: organisation.id, ...forgotten });
    }
  },
};
