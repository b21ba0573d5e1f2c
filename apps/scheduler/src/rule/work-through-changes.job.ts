/** Every minute: changes of own rules that are not finished, and versions whose day has come. */
import { workThroughRuleChanges } from '@garboard/actions/rule/work-through-rule-changes.ts';
import { listOrganisations } from '@garboard/db/organisation/organisations.ts';
import type { Job } from '../job.ts';

export const workThroughChanges: Job = {
  name: 'work-through-rule-changes',
  cron: '* * * * *',
  async run({ owner, app, now, log }) {
    for (const organisation of await listOrganisations(owner)) {
      const worked = await workThroughRuleChanges(app, organisation.id, now());
      if (worked.begun + worked.finished > 0)
        log({ level: 'info', message: 'rule changes worked through', organisationId: organisation.id, ...worked });
    }
  },
};
