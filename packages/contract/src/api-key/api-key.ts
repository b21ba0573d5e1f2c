/** Keys of programs. The text of a key is told once, by the answer that makes or renews it. */
import * as z from 'zod';
import { PermissionCode, RoleCode, VesselIds } from '../organisation/role.ts';
import { Id, Instant, pageOf, words } from '../shared.ts';

const ID = '0198c5a4-6f0a-7a11-9c3d-2b4e6f8a0c1e';
const Permissions = z.array(PermissionCode).min(1).max(20).meta({
  id: 'KeyPermissions',
  description: 'Of what its role may, these alone. Absent: all of it. `read` is always among them.',
});
const granted = { role: RoleCode, permissions: Permissions.optional(), vesselIds: VesselIds.optional() };
const EXPIRES = 'At most 366 days ahead.';

export const NewApiKey = z
  .strictObject({ name: words(80), ...granted, expiresAt: Instant.meta({ description: EXPIRES }) })
  .meta({
    id: 'NewApiKey',
    example: {
      name: 'tide board in the office',
      role: 'surveyor',
      permissions: ['read', 'record_facts'],
      expiresAt: '2027-05-31T21:59:59Z',
    },
  });
export type NewApiKey = z.infer<typeof NewApiKey>;

const known = {
  id: Id,
  name: z.string(),
  ...granted,
  endsWith: z.string().optional().meta({ description: 'The last characters of its text, to tell keys apart.' }),
  madeBy: z
    .string()
    .optional()
    .meta({ description: 'The credential that made it; absent where it was made at the machine.' }),
  createdAt: Instant,
  expiresAt: Instant,
  previousUntil: Instant.optional().meta({ description: 'Until then the text before the present one works too.' }),
  lastUsedAt: Instant.optional().meta({ description: 'To the minute; absent while it never was.' }),
  revokedAt: Instant.optional(),
  version: z.int().meta({ description: 'Its `ETag`.' }),
};
const EXAMPLE = {
  id: ID,
  name: 'tide board in the office',
  role: 'surveyor',
  permissions: ['read', 'record_facts'],
  endsWith: 'x3Qw',
  madeBy: 'person:5a0c9b2e-0f6b-4a53-9c35-0d8f5b7e2a11',
  createdAt: '2026-11-25T08:12:00Z',
  expiresAt: '2027-05-31T21:59:59Z',
  version: 1,
} as const;

export const ApiKey = z.object(known).meta({ id: 'ApiKey', example: EXAMPLE });
export type ApiKey = z.infer<typeof ApiKey>;
export const ApiKeyPage = pageOf(ApiKey, 'ApiKeyPage');
export type ApiKeyPage = z.infer<typeof ApiKeyPage>;

export const ApiKeyWithText = z
  .object({
    ...known,
    key: z.string().optional().meta({
      description: 'The text to send as `Authorization: Bearer …`. Told only this once: a repeat does not have it.',
    }),
  })
  .meta({ id: 'ApiKeyWithText', example: { ...EXAMPLE, key: 'gbk_…' } });
export type ApiKeyWithText = z.infer<typeof ApiKeyWithText>;

/** House convention, no source: how long the text before may go on beside the new one. */
const LONGEST_OVERLAP_HOURS = 168;

export const ApiKeyRenewal = z
  .strictObject({
    overlapHours: z
      .int()
      .min(0)
      .max(LONGEST_OVERLAP_HOURS)
      .default(24)
      .meta({ description: 'How long the text before works too; 0: it is over at once.', default: 24 }),
    expiresAt: Instant.meta({ description: EXPIRES }),
  })
  .meta({ id: 'ApiKeyRenewal', example: { overlapHours: 24, expiresAt: '2027-05-31T21:59:59Z' } });
export type ApiKeyRenewal = z.infer<typeof ApiKeyRenewal>;

export const ApiKeyRevocation = z
  .strictObject({ reason: words(500).optional() })
  .meta({ id: 'ApiKeyRevocation', example: { reason: 'It stood in a script that was published.' } });
export type ApiKeyRevocation = z.infer<typeof ApiKeyRevocation>;
