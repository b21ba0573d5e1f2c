/** The tables as Kysely sees them. A `date` column is ISO text; `infinity` stands for "no date to go by". */
import type { ColumnType, Generated } from 'kysely';
import type { ApiKeyTable, ApiKeyUseTable } from './api-key/tables.ts';
import type { Instant, Json, MaybeInstant, MaybeJson } from './column.ts';
import type { FindingEntryTable, FindingTable, FindingTermsTable, MatterTable } from './finding/tables.ts';
import type { InvitationTable, MembershipTable } from './organisation/tables.ts';
import type { FormerPlateTable, NoticeAnswerTable, SafetyNoticeTable } from './safety-notice/tables.ts';
import type { ShareLinkTable, ShareViewTable } from './share/tables.ts';
import type {
  LimitationAnswerTable,
  LimitationTable,
  ReadingTable,
  ReferralTable,
  SurveyRouteTable,
  SurveyVisitTable,
  VisitAddendumTable,
  VisitAnswerTable,
} from './survey-visit/tables.ts';

type Secret = {
  organisation_id: string;
  id: string;
  secret_hash: Buffer;
  created_at: Instant;
  expires_at: Instant;
};

export type VesselTable = {
  organisation_id: string;
  id: string;
  name: string;
  type: string | null;
  built_year: number | null;
  length_overall_m: number | null;
  hull_material: string | null;
  rig: string | null;
  beam_m: number | null;
  draught_m: number | null;
  waterline_length_m: number | null;
  displacement_kg: number | null;
  persons_max: number | null;
  identifiers: Json<Record<string, string>>;
  value_minor: number | null;
  value_currency: string | null;
  schemes: string[];
  time_zone: string;
  home_port: string | null;
  created_at: Instant;
  version: number;
};

export type SituationTable = {
  organisation_id: string;
  id: string;
  vessel_id: string;
  starts_on: string;
  place: string;
  use: string;
  dismantled: boolean;
  under_repair: boolean;
  recorded_at: Instant;
};

export type VesselEventTable = {
  organisation_id: string;
  id: string;
  vessel_id: string;
  event: string;
  on_day: string;
  planned: boolean;
  note: string | null;
  recorded_at: Instant;
};

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

export type Database = {
  survey_route: SurveyRouteTable;
  survey_visit: SurveyVisitTable;
  visit_answer: VisitAnswerTable;
  reading: ReadingTable;
  limitation: LimitationTable;
  limitation_answer: LimitationAnswerTable;
  referral: ReferralTable;
  visit_addendum: VisitAddendumTable;
  organisation: { id: string; name: string; time_zone: string; created_at: Instant; version: Generated<number> };
  api_key: ApiKeyTable;
  api_key_use: ApiKeyUseTable;
  share_link: ShareLinkTable;
  share_view: ShareViewTable;
  sign_in_link: Secret & { person_id: string; used_at: MaybeInstant };
  membership: MembershipTable;
  invitation: InvitationTable;
  vessel: VesselTable;
  situation: SituationTable;
  vessel_event: VesselEventTable;
  item: ItemTable;
  fact: FactTable;
  override: OverrideTable;
  own_rule: OwnRuleTable;
  own_rule_version: OwnRuleVersionTable;
  rule_change: RuleChangeTable;
  safety_notice: SafetyNoticeTable;
  notice_answer: NoticeAnswerTable;
  former_plate: FormerPlateTable;
  obligation: ObligationTable;
  finding_terms: FindingTermsTable;
  finding: FindingTable;
  finding_entry: FindingEntryTable;
  matter: MatterTable;
  season: { organisation_id: string; starts: string | null; ends: string | null; version: number };
  saved_view: SavedViewTable;
  day_count: {
    organisation_id: string;
    overdue_after: string;
    due_from: string;
    suspended: string;
    weight: string;
    n: number;
  };
  vessel_standing: {
    organisation_id: string;
    vessel_id: string;
    items: number;
    dated: number;
    undated: number;
    earliest_overdue_after: string | null;
  };
  idempotency: {
    organisation_id: string;
    credential_id: string;
    key: string;
    fingerprint: Buffer;
    value: MaybeJson<unknown>;
    created_at: Instant;
  };
  audit: {
    organisation_id: string;
    id: string;
    at: Instant;
    actor: string;
    request_id: string;
    verb: string;
    subject: string;
    subject_id: string;
    before: MaybeJson<unknown>;
    after: MaybeJson<unknown>;
    sequence: number | null;
    previous: Buffer | null;
    hash: Buffer | null;
    credential: string | null;
    role: string | null;
  };
  audit_head: { organisation_id: string; sequence: number; hash: Buffer; before_chain: Generated<number> };
};
