/** Who the credential stands for. */
import * as z from 'zod';
import { Id } from '../shared.ts';

const RoleCode = z.enum(['owner', 'manager', 'surveyor', 'yard', 'viewer']).meta({
  id: 'RoleCode',
  description:
    'What somebody may do. Every role reads; `viewer` changes nothing; the register is kept by `owner` and `manager`.',
});

export const Session = z.object({ organisation: z.object({ id: Id, name: z.string() }), role: RoleCode }).meta({
  id: 'Session',
  example: {
    organisation: { id: '0198c5a2-7b1e-7c3d-9a41-5f2e8d7c6b5a', name: 'Curlew Sailing School' },
    role: 'manager',
  },
});
export type Session = z.infer<typeof Session>;
