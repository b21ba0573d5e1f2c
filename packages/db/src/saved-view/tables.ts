/** Saved views, as Kysely sees it. A `date` column is ISO text; `infinity` stands for "no date to go by". */
import type { ColumnType } from 'kysely';
import type { Instant, Json } from '../column.ts';

export type SavedViewTable = {
  organisation_id: string;
  id: string;
  name: string;
  page: string;
  filters: Json<Record<string, string>>;
  owner_id: string | null;
  saved_by: string;
  created_at: Instant;
  removed_at: ColumnType<Date | null, string | null, string | null>;
  version: number;
};
