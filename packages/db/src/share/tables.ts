/** Links for outsiders, as Kysely sees them. */
import type { Generated } from 'kysely';
import type { Instant, MaybeInstant } from '../column.ts';

/** `vessel_ids`: `null` for the whole fleet. */
export type ShareLinkTable = {
  organisation_id: string;
  id: string;
  label: string;
  vessel_ids: string[] | null;
  purpose: Generated<string>;
  finding_ids: string[] | null;
  shows_value: boolean;
  secret_hash: Buffer;
  made_by: string;
  created_at: Instant;
  expires_at: Instant;
  revoked_at: MaybeInstant;
  version: Generated<number>;
};

export type ShareViewTable = {
  organisation_id: string;
  id: string;
  link_id: string;
  at: Instant;
  user_agent: string | null;
};
