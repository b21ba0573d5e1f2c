/** What only an administrator at the machine does: organisations, keys and sign-in links. Uses the owner's pool. */
import { insertApiKey, lockApiKey, revokeApiKey } from '@garboard/db/api-key/api-keys.ts';
import { insertSignInLink } from '@garboard/db/organisation/credentials.ts';
import {
  findOrganisationsByName,
  insertOrganisation,
  type OrganisationRecord,
} from '@garboard/db/organisation/organisations.ts';
import { endOf, mintToken, type Token, type TokenKind } from '@garboard/db/organisation/token.ts';
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
  if ((await findOrganisationsByName(owner, wanted)).length > 0)
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

type Credential = { readonly organisationId: string; readonly now: Date; readonly expiresAt: Date };
export type NewApiKey = Credential & { readonly role: Role; readonly name: string };
export type NewSignInLink = Credential & { readonly personId: string };

/** Answers with the key's text, which is stored nowhere and shown only this once. */
export function createApiKey(owner: Db, { role, name, ...key }: NewApiKey): Promise<string> {
  return mint(owner, 'api_key', key, { role, name }, (tx, token) =>
    insertApiKey(tx, token, {
      ...{ id: token.id, name, role, vesselIds: 'all', permissions: 'all', endsWith: endOf(token.text), madeBy: null },
      createdAt: key.now.toISOString(),
      expiresAt: key.expiresAt.toISOString(),
      ...{ previousUntil: null, lastUsedAt: null, revokedAt: null, version: 1 },
    }),
  );
}

/** Answers with the link's token. It signs the person in, once. */
export function createSignInLink(owner: Db, { personId, ...link }: NewSignInLink): Promise<string> {
  return mint(owner, 'sign_in_link', link, { personId }, (tx, token) =>
    insertSignInLink(tx, { token, now: link.now, expiresAt: link.expiresAt, personId }),
  );
}

/** `false` when there is no such key, or it is revoked already. */
export function revokeKey(owner: Db, { organisationId, id }: Token, now: Date): Promise<boolean> {
  return inOrganisation(owner, wholeFleet(organisationId), async (tx) => {
    const key = await lockApiKey(tx, id);
    if (!key || key.revokedAt) return false;
    await revokeApiKey(tx, key, now);
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

type Insert = (tx: Scoped, token: ReturnType<typeof mintToken>) => Promise<void>;

async function mint(
  owner: Db,
  kind: TokenKind,
  { organisationId, now, expiresAt }: Credential,
  about: object,
  insert: Insert,
): Promise<string> {
  const token = mintToken(kind, organisationId, newId(now));
  await inOrganisation(owner, wholeFleet(organisationId), async (tx) => {
    await insert(tx, token);
    audit(asUpkeep(owner, tx, organisationId, now), {
      verb: `create_${kind}`,
      subject: 'api_key',
      subjectId: token.id,
      before: null,
      after: { kind, ...about, expiresAt },
    });
  });
  return token.text;
}
