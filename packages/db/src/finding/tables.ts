/** Findings, as Kysely sees them. */
import type { Entry } from '@garboard/domain/finding/entry.ts';
import type { Finding } from '@garboard/domain/finding/finding.ts';
import type { Generated } from 'kysely';
import type { Instant, Json } from '../column.ts';

export type FindingTermsTable = {
  organisation_id: string;
  within_weeks_days: number;
  put_off_at_most_days: number;
  second_pair_of_eyes: boolean;
  version: number;
};

export type FindingTable = {
  organisation_id: string;
  id: string;
  vessel_id: string;
  number: number;
  item_id: string | null;
  zone: string;
  what: string;
  hazard: string;
  urgency: string;
  state: string;
  is_open: boolean;
  trade: string | null;
  responsible: string | null;
  first_seen_on: string;
  last_seen_on: string;
  rank: number;
  detail: Json<Finding>;
  created_at: Instant;
  version: Generated<number>;
};

/** `said`: the entry without what has a column of its own. */
export type FindingEntryTable = {
  organisation_id: string;
  id: string;
  finding_id: string;
  vessel_id: string;
  visit_id: string | null;
  step: string;
  said: Json<Omit<Entry, 'id' | 'by' | 'on' | 'recordedAt' | 'step'>>;
  on_day: string;
  recorded_by: string;
  recorded_at: Instant;
};

export type MatterTable = {
  organisation_id: string;
  id: string;
  source: string;
  vessel_id: string;
  zone: string;
  label: string;
  action: string;
  sentence: string;
  urgency: string | null;
  trade: string | null;
  responsible: string | null;
  due_from: string;
  overdue_after: string;
};
