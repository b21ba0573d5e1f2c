/** A vessel's row as everybody past this folder sees it. */
import type { SchemeId } from '@garboard/domain/rule/scheme.ts';
import type { Insertable, Selectable } from 'kysely';
import type { VesselTable } from './tables.ts';

export type Identifiers = {
  readonly hin?: string | undefined;
  readonly imo?: string | undefined;
  readonly mmsi?: string | undefined;
  readonly callSign?: string | undefined;
  readonly officialNumber?: string | undefined;
};

/** Absent particulars are not known. Money in minor units. */
export type Particulars = {
  readonly name: string;
  readonly type: string | null;
  readonly builtYear: number | null;
  readonly lengthOverallM: number | null;
  readonly hullMaterial: string | null;
  readonly rig: string | null;
  readonly beamM: number | null;
  readonly draughtM: number | null;
  readonly waterlineLengthM: number | null;
  readonly displacementKg: number | null;
  readonly personsMax: number | null;
  readonly identifiers: Identifiers;
  readonly value: { readonly minor: number; readonly currency: string } | null;
  readonly schemes: readonly SchemeId[];
  readonly timeZone: string;
  readonly homePort: string | null;
};

export type VesselRecord = Particulars & { readonly id: string; readonly createdAt: string; readonly version: number };

export function toVesselRecord(row: Selectable<VesselTable>): VesselRecord {
  return {
    id: row.id,
    name: row.name,
    type: row.type,
    builtYear: row.built_year,
    lengthOverallM: row.length_overall_m,
    hullMaterial: row.hull_material,
    rig: row.rig,
    beamM: row.beam_m,
    draughtM: row.draught_m,
    waterlineLengthM: row.waterline_length_m,
    displacementKg: row.displacement_kg,
    personsMax: row.persons_max,
    identifiers: row.identifiers,
    value:
      row.value_minor === null || row.value_currency === null
        ? null
        : { minor: row.value_minor, currency: row.value_currency },
    schemes: row.schemes as SchemeId[],
    timeZone: row.time_zone,
    homePort: row.home_port,
    createdAt: row.created_at.toISOString(),
    version: row.version,
  };
}

export function toColumns(
  particulars: Particulars,
): Omit<Insertable<VesselTable>, 'organisation_id' | 'id' | 'created_at' | 'version'> {
  return {
    name: particulars.name,
    type: particulars.type,
    built_year: particulars.builtYear,
    length_overall_m: particulars.lengthOverallM,
    hull_material: particulars.hullMaterial,
    rig: particulars.rig,
    beam_m: particulars.beamM,
    draught_m: particulars.draughtM,
    waterline_length_m: particulars.waterlineLengthM,
    displacement_kg: particulars.displacementKg,
    persons_max: particulars.personsMax,
    identifiers: JSON.stringify(particulars.identifiers),
    value_minor: particulars.value?.minor ?? null,
    value_currency: particulars.value?.currency ?? null,
    schemes: [...particulars.schemes],
    time_zone: particulars.timeZone,
    home_port: particulars.homePort,
  };
}
