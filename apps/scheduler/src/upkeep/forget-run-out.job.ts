/** Every hour: sessions that ended and keys of old requests are forgotten. */
import { forget } from '@garboard/actions/upkeep/forget.ts';
import { listOrganisations } from '@garboard/db/organisation/organisations.ts';
import { forgetRunOutSessions } from '@garboard/db/organisation/registered-people.ts';
import type { Job } from '../job.ts';

export const forgetRunOut: Job = {
  name: 'forget-run-out',
  cron: '40 * * * *',
  async run({ owner, app, now, log }) {
    for (const organisation of await listOrganisations(owner)) {
      const keys = await forget(app, organisation.id, now());
      if (keys > 0) log({ level: 'info', message: 'forgot', organisationId: organisation.id, keys });
    }
    const sessions = await forgetRunOutSessions(owner);
    if (sessions > 0) log({ level: 'info', message: 'forgot', sessions });
  },
};
