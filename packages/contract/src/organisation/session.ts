/** Who the credential stands for. */
import * as z from 'zod';
import { Id } from '../shared.ts';
import { PermissionCode, RoleCode, VesselIds } from './role.ts';

const SessionPerson = z
  .object({ id: Id, name: z.string(), email: z.string() })
  .meta({ id: 'SessionPerson', description: 'Absent for an API key.' });

export const Session = z
  .object({
    person: SessionPerson.optional(),
    organisation: z.object({ id: Id, name: z.string() }).optional().meta({
      description: 'Absent for a person who belongs to none, or not any more to the one they were at.',
    }),
    role: RoleCode.optional().meta({ description: 'In that organisation.' }),
    permissions: z.array(PermissionCode),
    vesselIds: VesselIds.optional(),
  })
  .meta({
    id: 'Session',
    example: {
      person: { id: '5a0c9b2e-0f6b-4a53-9c35-0d8f5b7e2a11', name: 'Ines Falk', email: 'ines@curlew.example' },
      organisation: { id: '0198c5a2-7b1e-7c3d-9a41-5f2e8d7c6b5a', name: 'Curlew Sailing School' },
      role: 'surveyor',
      permissions: ['read', 'record_facts'],
      vesselIds: ['0198c5a2-7b1e-7c3d-9a41-5f2e8d7c6b5c'],
    },
  });
export type Session = z.infer<typeof Session>;
