/** The tables of safety notices as Kysely sees them. */
import type { ColumnType } from 'kysely';
import type { Instant, Json } from '../column.ts';

export type SafetyNoticeTable = {
  organisation_id: string;
  id: string;
  title: string;
  publisher: string;
  reference: string | null;
  issued_on: string;
  address: string | null;
  document: string | null;
  kinds: string[];
  makers: string[];
  models: string[];
  serials: Json<{ from: string | null; to: string | null }[]>;
  made_from: string | null;
  made_to: string | null;
  hazard: string;
  action_kind: string;
  action_words: string;
  deadline_kind: string;
  deadline_on: string | null;
  deadline_days: number | null;
  weight: string;
  recorded_by: string;
  recorded_at: Instant;
  withdrawn_on: ColumnType<string | null, never, string>;
  withdrawn_at: ColumnType<Date | null, never, string>;
  withdrawn_by: ColumnType<string | null, never, string>;
  withdrawn_reason: ColumnType<string | null, never, string>;
};

export type NoticeAnswerTable = {
  organisation_id: string;
  id: string;
  notice_id: string;
  item_id: string;
  vessel_id: string;
  answer: string;
  on_day: string;
  done_by: Json<{ name?: string; capacity?: string; certificate?: string }>;
  evidence: string | null;
  reference: string | null;
  note: string | null;
  until_day: string | null;
  serial_read: string | null;
  serial_then: string | null;
  replaced: boolean;
  corrects: string | null;
  recorded_by: string;
  recorded_at: Instant;
};

export type FormerPlateTable = {
  organisation_id: string;
  id: string;
  item_id: string;
  vessel_id: string;
  maker: string | null;
  model: string | null;
  serial_number: string | null;
  quantity: number;
  replaced_on: string | null;
  written_over_at: Instant;
};
