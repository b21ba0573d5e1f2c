/** A vessel's record as the API shows it, and what the API is told as the record keeps it. What is not known is absent. */
import type { NewVessel, Vessel, VesselChange } from '@garboard/contract/vessel/vessel.ts';
import type { Identifiers, Particulars, VesselRecord } from '@garboard/db/vessel/vessel-record.ts';
import { given } from '../request/given.ts';
import { withoutNulls } from '../request/without-nulls.ts';
import { fromMinor, toMinor } from './money.ts';
import { identifierNotes } from './present-identifiers.ts';

export function presentVessel({ identifiers, value, schemes, ...vessel }: VesselRecord): Vessel {
  return withoutNulls({
    id: vessel.id,
    name: vessel.name,
    type: vessel.type,
    builtYear: vessel.builtYear,
    lengthOverallM: vessel.lengthOverallM,
    hullMaterial: vessel.hullMaterial,
    rig: vessel.rig,
    beamM: vessel.beamM,
    draughtM: vessel.draughtM,
    waterlineLengthM: vessel.waterlineLengthM,
    displacementKg: vessel.displacementKg,
    personsMax: vessel.personsMax,
    identifiers: presentIdentifiers(identifiers),
    identifierNotes: identifierNotes(identifiers, vessel.builtYear),
    value: value && fromMinor(value),
    schemes: [...schemes],
    timeZone: vessel.timeZone,
    homePort: vessel.homePort,
    createdAt: vessel.createdAt,
    version: vessel.version,
  });
}

/** Always in one order, however they came, so that a repeated answer is the same to the byte. */
function presentIdentifiers({ hin, imo, mmsi, callSign, officialNumber }: Identifiers) {
  return {
    ...(hin && { hin }),
    ...(imo && { imo }),
    ...(mmsi && { mmsi }),
    ...(callSign && { callSign }),
    ...(officialNumber && { officialNumber }),
  };
}

export function toParticulars(vessel: NewVessel, timeZone: string): Particulars {
  return { ...NOTHING_KNOWN, ...toChange(vessel), name: vessel.name, timeZone: vessel.timeZone ?? timeZone };
}

/** What is absent stays absent; `null` takes away. */
export function toChange({ value, identifiers, ...change }: VesselChange): Partial<Particulars> {
  return {
    ...given(change),
    ...(value !== undefined && { value: value && toMinor(value) }),
    ...(identifiers !== undefined && { identifiers: identifiers ?? {} }),
  };
}

const NOTHING_KNOWN: Omit<Particulars, 'name' | 'timeZone'> = {
  type: null,
  builtYear: null,
  lengthOverallM: null,
  hullMaterial: null,
  rig: null,
  beamM: null,
  draughtM: null,
  waterlineLengthM: null,
  displacementKg: null,
  personsMax: null,
  identifiers: {},
  value: null,
  schemes: [],
  homePort: null,
};
