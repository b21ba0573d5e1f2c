/** A person's own account, the same in every organisation. */
import * as z from 'zod';
import { Id, Instant } from '../shared.ts';

const Passkey = z
  .object({ id: Id, name: z.string().optional(), createdAt: Instant.optional() })
  .meta({ id: 'Passkey' });

const OpenSession = z
  .object({
    id: Id,
    current: z.boolean().meta({ description: 'The one that asks.' }),
    startedAt: Instant,
    endsAt: Instant,
    userAgent: z.string().optional().meta({ description: 'As the browser called itself when signing in.' }),
  })
  .meta({ id: 'OpenSession' });

export const Account = z
  .object({
    id: Id,
    name: z.string(),
    email: z.string(),
    hasPassword: z.boolean(),
    secondFactor: z.boolean(),
    passkeys: z.array(Passkey),
    sessions: z.array(OpenSession),
  })
  .meta({
    id: 'Account',
    example: {
      id: '5a0c9b2e-0f6b-4a53-9c35-0d8f5b7e2a11',
      name: 'Ines Falk',
      email: 'ines@curlew.example',
      hasPassword: true,
      secondFactor: false,
      passkeys: [],
      sessions: [],
    },
  });
export type Account = z.infer<typeof Account>;

export const AccountErasure = z
  .strictObject({ email: z.string().max(254).meta({ description: 'Your own address, so that it is meant.' }) })
  .meta({ id: 'AccountErasure', example: { email: 'ines@curlew.example' } });
export type AccountErasure = z.infer<typeof AccountErasure>;
