/** The register of vessels, as Kysely sees it. A `date` column is ISO text; `infinity` stands for "no date to go by". */
import type { Instant, Json } from '../column.ts';

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
