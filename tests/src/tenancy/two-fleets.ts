/** Two organisations, and one of them trying everything in the API, on its own things and on the other's. */
import { randomUUID } from 'node:crypto';
import { createApp } from '@garboard/api/app.ts';
import type { Pools } from '@garboard/db/pool.ts';
import { signedIn } from '../support/api.ts';
import { pools } from '../support/database.ts';
import { files } from '../support/files.ts';
import {
  type Asked,
  addressOf,
  bodyOf,
  contentTypeOf,
  ifMatchOf,
  questionOf,
  type Things,
  thingsOf,
} from '../support/operations.ts';
import { mintOrganisation, NOW, type TestOrganisation } from '../support/organisation.ts';

export type Fleet = { readonly organisation: TestOrganisation; readonly key: string; readonly things: Things };

export async function aFleet(home: Pools = pools): Promise<Fleet> {
  const organisation = await mintOrganisation(home);
  const client = await signedIn('owner', organisation);
  return { organisation, key: await organisation.key('owner'), things: await thingsOf(client, home) };
}

/** What an answer must not carry: every id of theirs. */
export const marksOf = ({ organisation, things }: Fleet): string[] =>
  [organisation.id, organisation.name, ...Object.values(things)].filter((mark) => /[0-9a-f]{8}-/.test(mark));

export type Attempt = { readonly name: string; readonly status: number; readonly text: string };

/** As `ours`: each operation on our things, and on theirs. */
export async function tryEverything(
  through: Pools,
  asked: readonly Asked[],
  ours: Fleet,
  theirs: Fleet,
): Promise<Attempt[]> {
  const app = createApp({ pools: through, files, now: () => NOW, log: () => {}, version: 'test' });
  const attempts: Attempt[] = [];
  for (const operation of asked)
    for (const things of [ours.things, theirs.things]) {
      const { method, path } = operation;
      const body = bodyOf(operation, things);
      const response = await app.request(`${addressOf(path, things)}${questionOf(operation.operation)}`, {
        method,
        headers: {
          authorization: `Bearer ${ours.key}`,
          'content-type': contentTypeOf(operation.operation) ?? 'application/json',
          'if-match': ifMatchOf(operation),
          'idempotency-key': randomUUID(),
        },
        ...(body !== undefined && { body: JSON.stringify(body) }),
      });
      attempts.push({ name: operation.name, status: response.status, text: await response.text() });
    }
  return attempts;
}
