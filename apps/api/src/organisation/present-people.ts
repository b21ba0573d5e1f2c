/** How memberships, invitations and organisations leave the API. */
import type { Invitation } from '@garboard/contract/organisation/invitation.ts';
import type { Person } from '@garboard/contract/organisation/person.ts';
import type { InvitationRecord } from '@garboard/db/organisation/invitations.ts';
import type { Member } from '@garboard/db/organisation/people.ts';
import type { Grant, Vessels } from '@garboard/domain/organisation/membership.ts';
import { allows, type Rights } from '@garboard/domain/organisation/permission.ts';
import { withoutNulls } from '../request/without-nulls.ts';

export const presentGrant = ({ role, vesselIds }: Grant) => ({
  role,
  ...(vesselIds !== 'all' && { vesselIds: [...vesselIds] }),
});

/** Addresses are for those who manage people; everybody sees who works here. */
export function presentPerson({ personId, name, email, joinedAt, version, ...grant }: Member, by: Rights): Person {
  const shown = withoutNulls({ name, email: allows(by, 'manage_people') ? email : null });
  return { id: personId, ...shown, ...presentGrant(grant), joinedAt, version };
}

export function presentInvitation(record: InvitationRecord): Invitation {
  const { id, email, invitedBy, createdAt, expiresAt, withdrawnAt, version } = record;
  return withoutNulls({ id, email, ...presentGrant(record), invitedBy, createdAt, expiresAt, withdrawnAt, version });
}

export const toVessels = (ids: readonly string[] | null | undefined): Vessels => ids ?? 'all';
