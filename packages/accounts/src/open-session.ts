/** A session opened by the server itself, for somebody who came by a one-time link. */
import { createAuthEndpoint } from 'better-auth/api';
import { setSessionCookie } from 'better-auth/cookies';
import type { BetterAuthPlugin } from 'better-auth/types';
import * as z from 'zod';

const Body = z.object({ personId: z.string(), organisationId: z.string() });

/** Not reachable from outside: it has no address. */
export const openSession = () =>
  ({
    id: 'open-session',
    endpoints: {
      openSession: createAuthEndpoint.serverOnly({ method: 'POST', body: Body }, async (ctx) => {
        const { personId, organisationId } = ctx.body;
        const user = await ctx.context.internalAdapter.findUserById(personId);
        if (!user) return ctx.json({ opened: false });
        const session = await ctx.context.internalAdapter.createSession(personId, false, {
          activeOrganisationId: organisationId,
        });
        await setSessionCookie(ctx, { session, user });
        return ctx.json({ opened: true });
      }),
    },
  }) satisfies BetterAuthPlugin;
