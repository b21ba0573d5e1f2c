/**
 * Erases a person: name, address and every way in are gone, memberships end. What they recorded stays, with the
 * id beside it that now says only "a former member": the safety record must not lose its facts.
 */
import { eraseInvitationsTo } from '@garboard/db/organisation/invitations.ts';
import { erasePerson, listOrganisationsOf } from '@garboard/db/organisation/sessions.ts';
import { enterScope, inScopes, wholeFleet } from '@garboard/db/scope.ts';
import type { PersonContext } from '../context.ts';
import { done, type Written } from '../result.ts';
import { catchRefusal, Refusal } from '../write.ts';
import { asPerson } from './as-person.ts';
import { endOwn } from './remove-member.ts';

/** The last owner of an organisation must hand it over first. */
export async function eraseAccount(ctx: PersonContext): Promise<Written<null, 'conflict'>> {
  return catchRefusal(() =>
    inScopes(ctx.db, async (tx) => {
      for (const { id, name, role } of await listOrganisationsOf(tx, ctx.person.id)) {
        await enterScope(tx, wholeFleet(id));
        const failure = await endOwn(asPerson(ctx, tx, id, role), ctx.person.id, 'erase_person');
        if (failure) throw new Refusal({ kind: 'conflict', detail: `${name}: ${failure.detail}` });
        await eraseInvitationsTo(tx, ctx.person.email);
      }
      await erasePerson(tx, ctx.person.id);
      return done(null);
    }),
  );
}
