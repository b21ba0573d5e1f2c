/** Who works in an organisation. */
import * as z from 'zod';
import { Id, Instant, orNull, pageOf, words } from '../shared.ts';
import { RoleCode, VesselIds } from './role.ts';

export const Person = z
  .object({
    id: Id,
    name: z.string().optional().meta({ description: 'Absent for somebody whose account was erased.' }),
    email: z.string().optional().meta({ description: 'Told to whoever may manage people, and to nobody else.' }),
    role: RoleCode,
    vesselIds: VesselIds.optional(),
    joinedAt: Instant,
    version: z.int().meta({ description: 'Its `ETag`.' }),
  })
  .meta({
    id: 'Person',
    example: {
      id: '5a0c9b2e-0f6b-4a53-9c35-0d8f5b7e2a11',
      name: 'Ines Falk',
      email: 'ines@curlew.example',
      role: 'surveyor',
      joinedAt: '2026-03-01T08:12:00Z',
      version: 1,
    },
  });
export type Person = z.infer<typeof Person>;
export const PersonPage = pageOf(Person, 'PersonPage');
export type PersonPage = z.infer<typeof PersonPage>;

export const PersonChange = z
  .strictObject({
    role: RoleCode.optional(),
    vesselIds: orNull(VesselIds).optional().meta({
      description: 'Only these vessels; `null`: the whole fleet. `owner` and `manager` are always for the whole fleet.',
    }),
  })
  .meta({ id: 'PersonChange', description: 'What is absent stays.', example: { role: 'viewer', vesselIds: null } });
export type PersonChange = z.infer<typeof PersonChange>;

export const PersonRemoval = z
  .strictObject({ reason: words(500) })
  .meta({ id: 'PersonRemoval', example: { reason: 'The season is over.' } });
export type PersonRemoval = z.infer<typeof PersonRemoval>;
