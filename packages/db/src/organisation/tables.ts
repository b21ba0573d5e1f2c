/** Where people belong, as Kysely sees it. */
import type { Generated } from 'kysely';
import type { Instant, MaybeInstant } from '../column.ts';

/** `vessel_ids`: `null` for the whole fleet. */
export type MembershipTable = {
  organisation_id: string;
  id: string;
  person_id: string;
  role: string;
  vessel_ids: string[] | null;
  joined_at: Instant;
  ended_at: MaybeInstant;
  version: Generated<number>;
};

export type InvitationTable = {
  organisation_id: string;
  id: string;
  email: string | null;
  role: string;
  vessel_ids: string[] | null;
  secret_hash: Buffer;
  invited_by: string;
  created_at: Instant;
  expires_at: Instant;
  accepted_at: MaybeInstant;
  withdrawn_at: MaybeInstant;
  version: Generated<number>;
};
