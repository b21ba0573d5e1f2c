/** Keys of programs, as Kysely sees them. */
import type { ColumnType, Generated } from 'kysely';
import type { Instant, MaybeInstant } from '../column.ts';

/** `null`: `vessel_ids` the whole fleet; `permissions` whatever its role may; the rest not known of older ones. */
export type ApiKeyTable = {
  organisation_id: string;
  id: string;
  name: string;
  role: string;
  vessel_ids: string[] | null;
  permissions: string[] | null;
  secret_hash: Buffer;
  ends_with: string | null;
  previous_hash: Buffer | null;
  previous_until: ColumnType<Date | null, string | null, string | null>;
  made_by: string | null;
  created_at: Instant;
  expires_at: Instant;
  revoked_at: MaybeInstant;
  version: Generated<number>;
};

export type ApiKeyUseTable = { organisation_id: string; key_id: string; last_used_at: Instant };
