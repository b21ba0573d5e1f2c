/** Changes the organisation's name or time zone. The vessels keep their own time zones. */
import {
  lockOrganisation,
  updateOrganisation,
  type VersionedOrganisation,
} from '@garboard/db/organisation/organisations.ts';
import { audit } from '../audit.ts';
import type { ActionContext } from '../context.ts';
import { done, refused, type Written } from '../result.ts';
import { write } from '../write.ts';

export type OrganisationChange = {
  readonly expectedVersion: number;
  /** What is absent stays. */
  readonly change: { readonly name?: string; readonly timeZone?: string };
};

export function changeOrganisation(
  ctx: ActionContext,
  { expectedVersion, change }: OrganisationChange,
): Promise<Written<VersionedOrganisation, 'stale'>> {
  return write(ctx, 'keep_organisation', async (write) => {
    const before = await lockOrganisation(write.tx);
    if (before.version !== expectedVersion) return refused({ kind: 'stale', version: before.version });
    const after = { ...before, ...change, version: before.version + 1 };
    await updateOrganisation(write.tx, after);
    const about = { subject: 'organisation', subjectId: before.id, before, after } as const;
    audit(write, { verb: 'change_organisation', ...about });
    return done(after);
  });
}
