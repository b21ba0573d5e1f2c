/** Every night: each organisation's audit along its chain. The head goes into the log, and so to wherever logs are kept. */
import { checkAudit } from '@garboard/actions/upkeep/check-audit.ts';
import { listOrganisations } from '@garboard/db/organisation/organisations.ts';
import type { Job } from '../job.ts';

export const checkAudits: Job = {
  name: 'check-audit',
  cron: '45 3 * * *',
  async run({ owner, app, log }) {
    for (const organisation of await listOrganisations(owner)) {
      const { broken, head, rows } = await checkAudit(app, organisation.id);
      log({
        level: broken ? 'error' : 'info',
        message: broken ? 'the audit is not what it was' : 'the audit is whole',
        organisationId: organisation.id,
        rows,
        head: `${head.sequence}:${head.hash}`,
        ...(broken && { broken }),
      });
    }
  },
};
