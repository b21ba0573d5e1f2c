/** A person founds an organisation, owns it, and is there at once. */
import { createHash } from 'node:crypto';
import { insertMembership } from '@garboard/db/organisation/memberships.ts';
import {
  insertOrganisation,
  loadOrganisation,
  type VersionedOrganisation,
} from '@garboard/db/organisation/organisations.ts';
import { goToOrganisation } from '@garboard/db/organisation/sessions.ts';
import { inOrganisation, wholeFleet } from '@garboard/db/scope.ts';
import { audit } from '../audit.ts';
import type { PersonContext } from '../context.ts';
import { newId } from '../new-id.ts';
import { done, type Written } from '../result.ts';
import { catchRefusal, writeOnce } from '../write.ts';
import { asPerson } from './as-person.ts';

export type Founding = { readonly name: string; readonly timeZone: string };

export function foundOrganisation(
  ctx: PersonContext,
  founding: Founding,
): Promise<Written<VersionedOrganisation, never>> {
  const id = organisationId(ctx);
  const transaction = () =>
    inOrganisation(ctx.db, wholeFleet(id), async (tx) => {
      await insertOrganisation(tx, { id, ...founding, createdAt: ctx.now });
      const write = asPerson(ctx, tx, id, 'owner');
      return writeOnce({ ...write, ctx: { ...write.ctx, ...(ctx.once && { once: ctx.once }) } }, async () => {
        const grant = { role: 'owner', vesselIds: 'all' } as const;
        const joinedAt = ctx.now.toISOString();
        await insertMembership(tx, id, { id: newId(ctx.now), personId: ctx.person.id, joinedAt, ...grant });
        const organisation = await loadOrganisation(tx);
        const about = { subject: 'organisation', subjectId: id, before: null, after: organisation } as const;
        audit(write, { verb: 'create_organisation', ...about });
        await goToOrganisation(tx, ctx.person.sessionId, id);
        return done(organisation);
      });
    });
  return catchRefusal(transaction);
}

/** The same for a repeat with the same key, so that the repeat finds what the first one made. */
function organisationId({ once, person, now }: PersonContext): string {
  if (!once) return newId(now);
  const hash = createHash('sha256').update(`${person.id} ${once.key}`).digest();
  hash[6] = ((hash[6] ?? 0) & 0x0f) | 0x80;
  hash[8] = ((hash[8] ?? 0) & 0x3f) | 0x80;
  return hash.toString('hex', 0, 16).replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/, '$1-$2-$3-$4-$5');
}
