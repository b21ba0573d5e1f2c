/** Invitations: for one address, once, for a week. */
import * as z from 'zod';
import { Id, Instant, pageOf, words } from '../shared.ts';
import { RoleCode, VesselIds } from './role.ts';

/** Kept and compared in lower case. */
const Address = z.email('must be an e-mail address').max(254).toLowerCase().meta({ example: 'ines@curlew.example' });
const granted = { role: RoleCode, vesselIds: VesselIds.optional() };

export const NewInvitation = z
  .strictObject({ email: Address, ...granted })
  .meta({ id: 'NewInvitation', example: { email: 'ines@curlew.example', role: 'surveyor' } });
export type NewInvitation = z.infer<typeof NewInvitation>;

export const Invitation = z
  .object({
    id: Id,
    email: z.string().optional().meta({ description: 'Forgotten once it is accepted or withdrawn.' }),
    ...granted,
    invitedBy: z.string().meta({ description: 'The credential that invited.' }),
    createdAt: Instant,
    expiresAt: Instant,
    withdrawnAt: Instant.optional(),
    mailed: z
      .boolean()
      .optional()
      .meta({ description: 'Told when it is made: whether the letter could be handed over.' }),
    version: z.int().meta({ description: 'Its `ETag`.' }),
  })
  .meta({
    id: 'Invitation',
    example: {
      id: '0198c5a4-6f0a-7a11-9c3d-2b4e6f8a0c1d',
      email: 'ines@curlew.example',
      role: 'surveyor',
      invitedBy: 'person:5a0c9b2e-0f6b-4a53-9c35-0d8f5b7e2a11',
      createdAt: '2026-03-01T08:12:00Z',
      expiresAt: '2026-03-08T08:12:00Z',
      version: 1,
    },
  });
export type Invitation = z.infer<typeof Invitation>;
export const InvitationPage = pageOf(Invitation, 'InvitationPage');
export type InvitationPage = z.infer<typeof InvitationPage>;

export const InvitationWithdrawal = z
  .strictObject({ reason: words(500).optional() })
  .meta({ id: 'InvitationWithdrawal', example: { reason: 'The address was wrong.' } });
export type InvitationWithdrawal = z.infer<typeof InvitationWithdrawal>;

export const InvitationToken = z
  .strictObject({ token: z.string().min(1).max(200).meta({ description: 'What the link in the letter ends with.' }) })
  .meta({ id: 'InvitationToken', example: { token: 'gbi_…' } });
export type InvitationToken = z.infer<typeof InvitationToken>;

export const InvitationPreview = z
  .object({ organisation: z.string(), email: z.string(), ...granted, expiresAt: Instant })
  .meta({
    id: 'InvitationPreview',
    example: {
      organisation: 'Curlew Sailing School',
      email: 'ines@curlew.example',
      role: 'surveyor',
      expiresAt: '2026-03-08T08:12:00Z',
    },
  });
export type InvitationPreview = z.infer<typeof InvitationPreview>;
