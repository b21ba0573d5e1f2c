/** Whose credential came with the request: a program's key, a person's session, or nobody's. */
import { findApiKey, noteUse } from '@garboard/db/api-key/api-keys.ts';
import { findPerson } from '@garboard/db/organisation/sessions.ts';
import { readToken } from '@garboard/db/organisation/token.ts';
import { inOrganisation, wholeFleet } from '@garboard/db/scope.ts';
import { rightsOf } from '@garboard/domain/api-key/api-key.ts';
import type { Context } from 'hono';
import { getSignedCookie } from 'hono/cookie';
import type { ApiEnv, Caller, Deps } from '../deps.ts';

/** Sets `person` and `caller`, whichever there are; `false` when there is nobody. A bad key counts alone, whatever the cookie. */
export async function authenticate(c: Context<ApiEnv>, deps: Deps): Promise<boolean> {
  const header = c.req.header('authorization');
  return header === undefined ? bySession(c, deps) : byKey(c, deps, header);
}

async function byKey(c: Context<ApiEnv>, deps: Deps, header: string): Promise<boolean> {
  const token = readToken(/^Bearer +(\S+)$/i.exec(header)?.[1] ?? '');
  if (token?.kind !== 'api_key') return false;
  const { organisationId } = token;
  const key = await inOrganisation(deps.pools.app, wholeFleet(organisationId), async (tx) => {
    const found = await findApiKey(tx, token, deps.now());
    if (found) await noteUse(tx, organisationId, found, deps.now());
    return found;
  });
  if (!key) return false;
  const actor = { kind: 'api_key', id: key.id, ...rightsOf(key) } as const;
  c.set('caller', { organisationId, actor, vesselIds: key.vesselIds });
  return true;
}

async function bySession(c: Context<ApiEnv>, { accounts, pools }: Deps): Promise<boolean> {
  const token = accounts && (await getSignedCookie(c, accounts.cookie.secret, accounts.cookie.name));
  const person = token ? await findPerson(pools.app, token) : null;
  if (!person) return false;
  c.set('person', person);
  if (person.at) c.set('caller', callerAt(person, person.at));
  return true;
}

type Person = NonNullable<ApiEnv['Variables']['person']>;

const callerAt = ({ id, sessionId }: Person, at: NonNullable<Person['at']>): Caller => ({
  organisationId: at.organisationId,
  actor: { kind: 'person', id, sessionId, role: at.role },
  vesselIds: at.vesselIds,
});
