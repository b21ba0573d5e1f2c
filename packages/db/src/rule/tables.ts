/** An organisation’s own figures and rules, as Kysely sees it. A `date` column is ISO text; `infinity` stands for "no date to go by". */
import type { ColumnType } from 'kysely';
import type { Instant, MaybeJson } from '../column.ts';

export type OverrideTable = {
  organisation_id: string;
  id: string;
  vessel_id: string;
  item_id: string | null;
  rule_id: string;
  duty: string;
  period: string;
  weight: string;
  decided_by: string;
  reason: string;
  document: string;
  starts_on: string;
  set_by: string;
  recorded_at: Instant;
  ended_on: ColumnType<string | null, never, string>;
  ended_at: ColumnType<Date | null, never, string>;
  ended_by: ColumnType<string | null, never, string>;
  ended_reason: ColumnType<string | null, never, string>;
};

export type OwnRuleTable = { organisation_id: string; id: string; version: number; created_at: Instant };

export type OwnRuleVersionTable = {
  organisation_id: string;
  rule_id: string;
  number: number;
  takes_effect_on: string;
  definition: MaybeJson<unknown>;
  decided_by: string;
  reason: string;
  document: string;
  set_by: string;
  recorded_at: Instant;
};

export type RuleChangeTable = {
  organisation_id: string;
  id: string;
  rule_id: string;
  number: number;
  kinds: string[];
  every_vessel: boolean;
  schemes: string[];
  vessel_ids: string[];
  cursor_vessel_id: string | null;
  cursor_item_id: string | null;
  items_total: number;
  items_done: number;
  obligations_changed: number;
  begun_at: Instant;
  finished_at: ColumnType<Date | null, Date | string | null, Date | string | null>;
};
