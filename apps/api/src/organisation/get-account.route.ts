/** GET /v1/account: one's own account, the same in every organisation. */
import { Account } from '@garboard/contract/organisation/account.ts';
import { createRoute } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import { json, PERSON, problems, routes } from '../openapi/declare.ts';
import { withoutNulls } from '../request/without-nulls.ts';
import { accountsOf, personAccess, personOf } from './access.ts';

const route = createRoute({
  method: 'get',
  path: '/v1/account',
  operationId: 'getAccount',
  tags: ['Account'],
  summary: 'Read your own account',
  description: 'How you can sign in, and where you are signed in now.',
  security: PERSON,
  responses: { 200: json(Account, 'Your account.'), ...problems('unauthenticated', 'forbidden', 'fault') },
});

export function getAccountRoute(deps: Deps) {
  return routes().openapi({ ...route, middleware: personAccess(deps) }, async (c) => {
    const { id, name, email, sessionId } = personOf(c);
    const { passkeys, sessions, ...ways } = await accountsOf(deps).read(id);
    const account: Account = {
      ...{ id, name, email, ...ways },
      passkeys: passkeys.map(({ createdAt, ...key }) =>
        withoutNulls({ ...key, createdAt: createdAt?.toISOString() ?? null }),
      ),
      sessions: sessions.map(({ startedAt, endsAt, ...session }) => ({
        ...withoutNulls(session),
        current: session.id === sessionId,
        startedAt: startedAt.toISOString(),
        endsAt: endsAt.toISOString(),
      })),
    };
    return c.json(account, 200);
  });
}
