/** Survey visits, as Kysely sees them. */
import type { Generated } from 'kysely';
import type { Instant, Json, MaybeJson } from '../column.ts';
import type { ReferralResult, VisitDetail } from './visit-record.ts';

type Of = { organisation_id: string; id: string; visit_id: string; vessel_id: string };
type By = { recorded_by: string; recorded_at: Instant };
type RouteZones = readonly { readonly zone: string; readonly name: string }[];

export type SurveyRouteTable = { organisation_id: string; craft: string; zones: Json<RouteZones>; version: number };

export type SurveyVisitTable = {
  organisation_id: string;
  id: string;
  vessel_id: string;
  craft: string;
  purpose: string;
  started_on: string;
  detail: Json<VisitDetail>;
  route: Json<RouteZones>;
  created_by: string;
  created_at: Instant;
  completed_on: string | null;
  completed_at: Date | string | null;
  completed_by: string | null;
  sealed: string | null;
  sealed_hash: Buffer | null;
  version: Generated<number>;
};

export type VisitAnswerTable = Of & By & { zone: string; answer: string; reason: string | null; words: string | null };

export type ReadingTable = Of &
  By & {
    zone: string;
    point: string;
    measure: string;
    value: number | null;
    unit: string;
    instrument: string | null;
    words: string | null;
    taken_on: string;
  };

export type LimitationTable = Of & {
  zone: string;
  item_id: string | null;
  what: string;
  reason: string;
  words: string | null;
  trade: string | null;
  imposed_on: string;
  lifted_on: string | null;
  recorded_by: string;
  created_at: Instant;
  version: Generated<number>;
};

export type LimitationAnswerTable = Of &
  By & { limitation_id: string; answer: string; reason: string | null; words: string | null; on_day: string };

export type ReferralTable = {
  organisation_id: string;
  id: string;
  visit_id: string | null;
  vessel_id: string;
  zone: string;
  item_id: string | null;
  finding_id: string | null;
  trade: string;
  what: string;
  due_on: string;
  responsible: string | null;
  asked_on: string;
  result: MaybeJson<ReferralResult>;
  recorded_by: string;
  created_at: Instant;
  version: Generated<number>;
};

export type VisitAddendumTable = Of & By & { name: string; words: string; reason: string };
