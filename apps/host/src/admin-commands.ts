/** The administrator's commands, each with an answer of one line. */
import {
  createApiKey,
  createOrganisation,
  createSignInLink,
  revokeKey,
} from '@garboard/actions/organisation/administer.ts';
import { createPerson } from '@garboard/actions/organisation/create-person.ts';
import type { Failure } from '@garboard/actions/result.ts';
import type { BlobStore } from '@garboard/blobs/blob-store.ts';
import {
  findOrganisationsByName,
  listOrganisations,
  type OrganisationRecord,
} from '@garboard/db/organisation/organisations.ts';
import { findPersonId } from '@garboard/db/organisation/registered-people.ts';
import { readToken } from '@garboard/db/organisation/token.ts';
import type { Pools } from '@garboard/db/pool.ts';
import { ROLES, type Role } from '@garboard/domain/organisation/permission.ts';
import { type Answer, type Options, said, wrong } from './admin-answer.ts';
import { check } from './check-command.ts';

const DAY_MS = 86_400_000;

export async function runCommand(
  { pools, store }: { readonly pools: Pools; readonly store: BlobStore },
  [command, argument]: readonly string[],
  options: Options,
  now: Date,
): Promise<Answer> {
  switch (command) {
    case 'create-organisation':
      return argument ? addOrganisation(pools, argument, options, now) : wrong('the organisation needs a name');
    case 'create-api-key':
      return withOrganisation(pools, options, (organisation) => addApiKey(pools, organisation, options, now));
    case 'create-user':
      return withOrganisation(pools, options, (organisation) => addUser(pools, organisation, options, now));
    case 'create-sign-in-link':
      return withOrganisation(pools, options, (organisation) => addSignInLink(pools, organisation, options, now));
    case 'revoke-api-key':
      return revoke(pools, argument ?? '', now);
    case 'check':
      return check(pools, store, options);
    default:
      return wrong(command ? `there is no command ${command}` : 'which command?');
  }
}

async function addOrganisation(pools: Pools, name: string, options: Options, now: Date): Promise<Answer> {
  const result = await createOrganisation(pools.owner, { name, timeZone: options['time-zone'] ?? 'UTC', now });
  if (result.ok) return said(result.value.id);
  const { failure } = result;
  if (failure.kind === 'invalid')
    return { ok: false, line: failure.errors.map(({ pointer, detail }) => `${pointer.slice(1)} ${detail}`).join('; ') };
  return { ok: false, line: failure.kind === 'conflict' ? failure.detail : failure.kind };
}

async function withOrganisation(
  pools: Pools,
  { organisation }: Options,
  work: (found: OrganisationRecord) => Promise<Answer>,
): Promise<Answer> {
  if (!organisation) return wrong('--organisation is missing');
  const named = await findOrganisationsByName(pools.owner, organisation);
  const found =
    named.length > 0 ? named : (await listOrganisations(pools.owner)).filter(({ id }) => id === organisation);
  if (found.length > 1) {
    const ids = found.map(({ id }) => id).join(', ');
    return { ok: false, line: `several organisations are called ${organisation}: give the id, one of ${ids}` };
  }
  return found[0] ? work(found[0]) : { ok: false, line: `there is no organisation ${organisation}` };
}

async function addApiKey(pools: Pools, organisation: OrganisationRecord, options: Options, now: Date): Promise<Answer> {
  const role = roleOf(options.role);
  const days = Number(options.days ?? 365);
  if (!role) return wrong(`--role must be one of ${ROLES.join(', ')}`);
  if (!Number.isInteger(days) || days < 1 || days > 3650) return wrong('--days must be a whole number from 1 to 3650');
  const key = { organisationId: organisation.id, role, name: options.name ?? 'made at the machine', now };
  return said(await createApiKey(pools.owner, { ...key, expiresAt: new Date(now.getTime() + days * DAY_MS) }));
}

async function addSignInLink(
  pools: Pools,
  organisation: OrganisationRecord,
  options: Options,
  now: Date,
): Promise<Answer> {
  if (!options.email) return wrong('--email is missing');
  const person = await findPersonId(pools.owner, options.email.toLowerCase());
  if (!person?.organisationIds.includes(organisation.id))
    return { ok: false, line: `nobody with the address ${options.email} belongs to ${organisation.name}` };
  return said(await linkFor(pools, organisation, person.id, now));
}

async function linkFor(pools: Pools, { id }: OrganisationRecord, personId: string, now: Date): Promise<string> {
  const expiresAt = new Date(now.getTime() + DAY_MS);
  return `/sign-in/${await createSignInLink(pools.owner, { organisationId: id, personId, now, expiresAt })}`;
}

async function addUser(pools: Pools, organisation: OrganisationRecord, options: Options, now: Date): Promise<Answer> {
  const role = roleOf(options.role);
  if (!role) return wrong(`--role must be one of ${ROLES.join(', ')}`);
  if (!options.email) return wrong('--email is missing');
  const { email, name = '' } = options;
  const person = { organisationId: organisation.id, name, email, role, vesselIds: 'all', now } as const;
  const result = await createPerson(pools.owner, person);
  if (result.ok) return said(await linkFor(pools, organisation, result.value, now));
  return { ok: false, line: inWords(result.failure) };
}

function inWords(failure: Extract<Failure, { kind: 'invalid' | 'conflict' }>): string {
  if (failure.kind === 'conflict') return failure.detail;
  return failure.errors.map(({ pointer, detail }) => `${pointer.slice(1)} ${detail}`).join('; ');
}

const roleOf = (text: string | undefined): Role | undefined => ROLES.find((role) => role === text);

async function revoke(pools: Pools, text: string, now: Date): Promise<Answer> {
  const token = readToken(text);
  if (token?.kind !== 'api_key') return wrong('revoke-api-key needs the key');
  const revoked = await revokeKey(pools.owner, token, now);
  return revoked ? said('revoked') : { ok: false, line: 'no such key, or revoked already' };
}
