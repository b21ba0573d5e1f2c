/** Gives organisations other names, all of them or none. Administration only: needs the owner's pool. */
import { type OrganisationRecord, updateOrganisationName } from '@garboard/db/organisation/organisations.ts';
import type { Db } from '@garboard/db/pool.ts';
import { enterScope, inScopes, wholeFleet } from '@garboard/db/scope.ts';
import { audit } from '../audit.ts';
import { asUpkeep } from './as-upkeep.ts';

export type Renaming = { readonly organisation: OrganisationRecord; readonly name: string };

export async function renameOrganisations(owner: Db, renamings: readonly Renaming[], now: Date): Promise<void> {
  await inScopes(owner, async (tx) => {
    for (const { organisation, name } of renamings) {
      await enterScope(tx, wholeFleet(organisation.id));
      await updateOrganisationName(tx, organisation.id, name);
      audit(asUpkeep(owner, tx, organisation.id, now), {
        verb: 'rename_organisation',
        subject: 'organisation',
        subjectId: organisation.id,
        before: organisation,
        after: { ...organisation, name },
      });
    }
  });
}
