/** The administrator's commands, each with an answer of one line. */
import {
  createApiKey,
  createOrganisation,
  createSignInLink,
  revokeKey,
} from '@garboard/actions/organisation/administer.ts';
import { findOrganisationByName, type OrganisationRecord } from '@garboard/db/organisation/organisations.ts';
import { readToken } from '@garboard/db/organisation/token.ts';
import type { Pools } from '@garboard/db/pool.ts';
import { ROLES, type Role } from '@garboard/domain/organisation/permission.ts';
import { type Answer, type Options, said, wrong } from './admin-answer.ts';
import { check } from './check-command.ts';

const DAY_MS = 86_400_000;

export async function runCommand(
  pools: Pools,
  [command, argument]: readonly string[],
  options: Options,
  now: Date,
): Promise<Answer> {
  switch (command) {
    case 'create-organisation':
      return argument ? addOrganisation(pools, argument, options, now) : wrong('the organisation needs a name');
    case 'create-api-key':
      return withOrganisation(pools, options, (organisation) => addApiKey(pools, organisation, options, now));
    case 'create-sign-in-link':
      return withOrganisation(pools, options, (organisation) => addSignInLink(pools, organisation, options, now));
    case 'revoke-api-key':
      return revoke(pools, argument ?? '', now);
    case 'check':
      return check(pools, options);
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
  const found = await findOrganisationByName(pools.owner, organisation);
  return found ? work(found) : { ok: false, line: `there is no organisation ${organisation}` };
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
  const role = roleOf(options.role ?? 'owner');
  if (!role) return wrong(`--role must be one of ${ROLES.join(', ')}`);
  const expiresAt = new Date(now.getTime() + DAY_MS);
  return said(
    `/sign-in/${await createSignInLink(pools.owner, { organisationId: organisation.id, role, now, expiresAt })}`,
  );
}

const roleOf = (text: string | undefined): Role | undefined => ROLES.find((role) => role === text);

async function revoke(pools: Pools, text: string, now: Date): Promise<Answer> {
  const token = readToken(text);
  if (token?.kind !== 'api_key') return wrong('revoke-api-key needs the key');
  const revoked = await revokeKey(pools.owner, token, now);
  return revoked ? said('revoked') : { ok: false, line: 'no such key, or revoked already' };
}
