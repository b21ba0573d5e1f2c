/** Takes a person's session to another organisation they belong to. */
import { loadOrganisation, type VersionedOrganisation } from '@garboard/db/organisation/organisations.ts';
import { goToOrganisation } from '@garboard/db/organisation/sessions.ts';
import { inOrganisation, wholeFleet } from '@garboard/db/scope.ts';
import type { PersonContext } from '../context.ts';
import { done, type Result, refused } from '../result.ts';

/** Nothing of the organisation changes, so nothing is written into its audit. */
export function switchOrganisation(
  ctx: PersonContext,
  organisationId: string,
): Promise<Result<VersionedOrganisation, 'not_found'>> {
  return inOrganisation(ctx.db, wholeFleet(organisationId), async (tx) =>
    (await goToOrganisation(tx, ctx.person.sessionId, organisationId))
      ? done(await loadOrganisation(tx))
      : refused({ kind: 'not_found' }),
  );
}
