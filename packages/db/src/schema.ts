/** The tables as Kysely sees them. A `date` column is ISO text; `infinity` stands for "no date to go by". */
import type { Generated } from 'kysely';
import type { ApiKeyTable, ApiKeyUseTable } from './api-key/tables.ts';
import type { Instant, MaybeInstant, MaybeJson } from './column.ts';
import type { EvidenceTable, UploadPieceTable, UploadTable } from './evidence/tables.ts';
import type { FindingEntryTable, FindingTable, FindingTermsTable, MatterTable } from './finding/tables.ts';
import type { FactTable, ItemTable, ObligationTable } from './item/tables.ts';
import type { InvitationTable, MembershipTable } from './organisation/tables.ts';
import type { OverrideTable, OwnRuleTable, OwnRuleVersionTable, RuleChangeTable } from './rule/tables.ts';
import type { FormerPlateTable, NoticeAnswerTable, SafetyNoticeTable } from './safety-notice/tables.ts';
import type { SavedViewTable } from './saved-view/tables.ts';
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
import type { SituationTable, VesselEventTable, VesselTable } from './vessel/tables.ts';

type Secret = {
  organisation_id: string;
  id: string;
  secret_hash: Buffer;
  created_at: Instant;
  expires_at: Instant;
};

export type Database = {
  evidence: EvidenceTable;
  upload: UploadTable;
  upload_piece: UploadPieceTable;
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
