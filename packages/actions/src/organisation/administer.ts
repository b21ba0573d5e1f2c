/** What only an administrator at the machine does: organisations, keys and sign-in links. Uses the owner's pool. */
import { insertApiKey, insertSignInLink, type NewSecret, revokeApiKey } from '@garboard/db/organisation/credentials.ts';
import {
  findOrganisationByName,
  insertOrganisation,
  type OrganisationRecord,
} from '@garboard/db/organisation/organisations.ts';
import { mintToken, type Token, type TokenKind } from '@garboard/db/organisation/token.ts';
import type { Db } from '@garboard/db/pool.ts';
import { inOrganisation, type Scoped, wholeFleet } from '@garboard/db/scope.ts';
import { isTimeZone } from '@garboard/domain/calendar/day-in-zone.ts';
import type { Role } from '@garboard/domain/organisation/permission.ts';
import { audit } from '../audit.ts';
import { newId } from '../new-id.ts';
import { done, type Result, refused } from '../result.ts';
import { asUpkeep } from './as-upkeep.ts';

export type NewOrganisation = { readonly name: string; readonly timeZone: string; readonly now: Date };

export async function createOrganisation(
  owner: Db,
  { name, timeZone, now }: NewOrganisation,
): Promise<Result<OrganisationRecord>> {
  const wanted = name.trim();
  if (wanted === '' || wanted.length > 120)
    return refused({ kind: 'invalid', errors: [{ pointer: '/name', detail: 'must be 1 to 120 characters' }] });
  if (!isTimeZone(timeZone))
    return refused({ kind: 'invalid', errors: [{ pointer: '/timeZone', detail: 'must be an IANA time zone' }] });
  if (await findOrganisationByName(owner, wanted))
    return refused({ kind: 'conflict', detail: `There is an organisation ${wanted} already.` });
  const organisation = { id: newId(now), name: wanted, timeZone };
  await insertOrganisation(owner, { ...organisation, createdAt: now });
  await inOrganisation(owner, wholeFleet(organisation.id), async (tx) =>
    audit(asUpkeep(owner, tx, organisation.id, now), {
      verb: 'create_organisation',
      subject: 'organisation',
      subjectId: organisation.id,
      before: null,
      after: organisation,
    }),
  );
  return done(organisation);
}

export type NewCredential = {
  readonly organisationId: string;
  readonly role: Role;
  readonly now: Date;
  readonly expiresAt: Date;
};

/** Answers with the key's text, which is stored nowhere and shown only this once. */
export function createApiKey(owner: Db, key: NewCredential & { readonly name: string }): Promise<string> {
  return mint(owner, 'api_key', key, (tx, secret) => insertApiKey(tx, { ...secret, name: key.name }));
}

/** Answers with the link's token. It opens one session, once. */
export function createSignInLink(owner: Db, link: NewCredential): Promise<string> {
  return mint(owner, 'sign_in_link', link, insertSignInLink);
}

/** `false` when there is no such key, or it is revoked already. */
export function revokeKey(owner: Db, { organisationId, id }: Token, now: Date): Promise<boolean> {
  return inOrganisation(owner, wholeFleet(organisationId), async (tx) => {
    if (!(await revokeApiKey(tx, id, now))) return false;
    const change = {
      verb: 'revoke_api_key',
      subject: 'api_key',
      subjectId: id,
      before: null,
      after: { revokedAt: now },
    } as const;
    audit(asUpkeep(owner, tx, organisationId, now), change);
    return true;
  });
}

type Insert = (tx: Scoped, secret: NewSecret) => Promise<void>;

async function mint(
  owner: Db,
  kind: TokenKind,
  { organisationId, ...secret }: NewCredential,
  insert: Insert,
): Promise<string> {
  const token = mintToken(kind, organisationId, newId(secret.now));
  await inOrganisation(owner, wholeFleet(organisationId), async (tx) => {
    await insert(tx, { token, role: secret.role, now: secret.now, expiresAt: secret.expiresAt });
    const after = { kind, role: secret.role, expiresAt: secret.expiresAt };
    audit(asUpkeep(owner, tx, organisationId, secret.now), {
      verb: `create_${kind}`,
      subject: 'api_key',
      subjectId: token.id,
      before: null,
      after,
    });
  });
  return token.text;
}
