/** Things aboard, facts about them and what follows, as Kysely sees it. A `date` column is ISO text; `infinity` stands for "no date to go by". */
import type { ColumnType } from 'kysely';
import type { Instant, Json, MaybeJson } from '../column.ts';

export type ItemTable = {
  organisation_id: string;
  id: string;
  vessel_id: string;
  kind: string;
  label: string;
  zone: string | null;
  quantity: number;
  maker: string | null;
  model: string | null;
  serial_number: string | null;
  attributes: Json<Record<string, string | number | boolean>>;
  withdrawn: boolean;
  created_at: Instant;
  version: number;
};

export type FactTable = {
  organisation_id: string;
  id: string;
  item_id: string;
  fact: string;
  on_text: string;
  outcome: string;
  test: string | null;
  done_by: MaybeJson<{ name?: string; capacity?: string; certificate?: string }>;
  evidence: string;
  until_day: string | null;
  reading: MaybeJson<{ value: number; unit: string }>;
  read_on: string | null;
  note: string | null;
  corrects: string | null;
  retracts: ColumnType<boolean, boolean | undefined, never>;
  recorded_at: Instant;
  recorded_by: string;
};

export type ObligationTable = {
  organisation_id: string;
  item_id: string;
  rule_id: string;
  duty: string;
  vessel_id: string;
  scheme: string;
  weight: string;
  action_kind: string;
  action_words: string;
  overdue_after: string;
  due_on: string;
  due_from: string;
  /** Days on which it is suspended, as PostgreSQL writes a `datemultirange`: `{[2026-11-02,2027-04-10)}`. */
  suspended: string;
  expires_on: string | null;
  replace_by: string | null;
  latest_permitted_on: string | null;
  windows: Json<unknown>;
  explanation: Json<unknown>;
};
