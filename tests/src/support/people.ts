/** People for tests: accounts over the run's database, letters in an outbox, and somebody who has signed in. */
import { randomUUID } from 'node:crypto';
import { type Accounts, openAccounts } from '@garboard/accounts/open-accounts.ts';
import type { Limits } from '@garboard/accounts/options.ts';
import { openOutbox } from '@garboard/accounts/outbox.ts';
import { createSignInLink } from '@garboard/actions/organisation/administer.ts';
import { createPerson } from '@garboard/actions/organisation/create-person.ts';
import type { Pools } from '@garboard/db/pool.ts';
import type { Vessels } from '@garboard/domain/organisation/membership.ts';
import type { Role } from '@garboard/domain/organisation/permission.ts';
import { pools } from './database.ts';
import { accepted, NOW } from './organisation.ts';

export const outbox = openOutbox();

/** So many that no test meets them by chance. */
const NO_LIMITS: Limits = { tries: 1e6, letters: 1e6, attemptsAtAccount: { max: 1e6, windowMs: 1000 } };

export function accountsForTests(
  publicUrl: () => string = () => 'http://localhost',
  limits: Limits = NO_LIMITS,
): Accounts {
  return openAccounts(
    {
      pool: pools.accounts,
      secret: 'a secret of the tests, long enough for the library',
      publicUrl,
      passkeyHost: 'localhost',
      secureCookies: false,
      sendMail: outbox.send,
      limits,
    },
    (fault) => {
      throw fault;
    },
  );
}

/** The last letter to that address; the path of the link in it. */
export function letterTo(email: string): { readonly subject: string; readonly path: string } {
  const letter = outbox.letters().find(({ to }) => to === email);
  if (!letter) throw new Error(`no letter to ${email}`);
  return { subject: letter.subject, path: /^https?:\/\/[^/]+(\/\S+)$/m.exec(letter.text)?.[1] ?? '' };
}

export const anAddress = () => `someone-${randomUUID()}@example.org`;

export type TestPerson = { readonly id: string; readonly email: string; readonly name: string };
export type Granted = { readonly role?: Role; readonly vesselIds?: Vessels; readonly email?: string };

/** Somebody who belongs to the organisation and can come in by a link. */
export async function aPerson(
  organisation: { readonly id: string },
  { role = 'owner', vesselIds = 'all', email = anAddress() }: Granted = {},
  home: Pools = pools,
): Promise<TestPerson> {
  const person = { organisationId: organisation.id, name: 'Ines Falk', email, role, vesselIds, now: NOW };
  return { id: accepted(await createPerson(home.owner, person)), email, name: person.name };
}

/** The path of a one-time link for that person. */
export async function linkOf(
  organisation: { readonly id: string },
  personId: string,
  expiresAt = new Date(NOW.getTime() + 3_600_000),
): Promise<string> {
  const link = { organisationId: organisation.id, personId, now: NOW, expiresAt };
  return `/sign-in/${await createSignInLink(pools.owner, link)}`;
}
