/** Every night: uploads given up and files of nobody go; a file that is on record and not in the store alarms. */
import { countMissing, sweepFiles } from '@garboard/actions/upkeep/look-after-files.ts';
import { listOrganisations } from '@garboard/db/organisation/organisations.ts';
import type { Job } from '../job.ts';

export const lookAfterFiles: Job = {
  name: 'look-after-files',
  cron: '15 4 * * *',
  async run({ owner, app, store, now, log }) {
    for (const { id: organisationId } of await listOrganisations(owner)) {
      const of = { db: app, store, organisationId };
      const swept = await sweepFiles(of, now());
      if (swept.uploads + swept.files > 0) log({ level: 'info', message: 'swept files', organisationId, ...swept });
      const { kept, missing } = await countMissing(of);
      if (missing > 0) log({ level: 'error', message: 'files are missing', organisationId, kept, missing });
    }
  },
};
