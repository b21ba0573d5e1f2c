/** The register: one boat and her particulars. */
import * as z from 'zod';
import { Id, Instant, Money, pageOf, words } from '../shared.ts';

export const SCHEME_CODES = [
  'solas',
  'us_recreational',
  'us_sailing_school',
  'us_small_passenger',
  'canada_lifesaving',
  'uk_small_commercial',
  'offshore_racing',
  'bs5306',
  'nfpa10',
  'insurer',
  'maker',
  'common_practice',
  'historic',
] as const;
export const SchemeCode = z.enum(SCHEME_CODES).meta({ id: 'SchemeCode', description: 'A body of rules a vessel is kept under.' });

export const Identifiers = z
  .strictObject({
    hin: words(20).optional(),
    imo: words(12).optional(),
    mmsi: words(12).optional(),
    callSign: words(12).optional(),
    officialNumber: words(30).optional(),
  })
  .meta({ id: 'Identifiers' });

const metres = (max: number) => z.number().positive().max(max);

const particulars = {
  name: words(120).meta({ example: 'Marsh Harrier' }),
  type: words(80).optional().meta({ example: 'sloop' }),
  builtYear: z.int().min(1800).max(2200).optional(),
  lengthOverallM: metres(200).optional(),
  hullMaterial: words(60).optional().meta({ example: 'GRP' }),
  rig: words(60).optional(),
  beamM: metres(60).optional(),
  draughtM: metres(30).optional(),
  waterlineLengthM: metres(200).optional(),
  displacementKg: z.number().positive().max(10_000_000).optional(),
  personsMax: z.int().min(1).max(1000).optional(),
  identifiers: Identifiers.optional(),
  value: Money.optional(),
  schemes: z.array(SchemeCode).max(20).optional(),
  timeZone: words(60).optional().meta({ description: 'IANA zone of the vessel’s own place; decides what day it is there.', example: 'Europe/Oslo' }),
  homePort: words(120).optional(),
};

export const NewVessel = z.strictObject(particulars).meta({ id: 'NewVessel' });
export type NewVessel = z.infer<typeof NewVessel>;

const { name, ...others } = particulars;

/** A change of particulars: what is absent stays, `null` takes it away. */
export const VesselChange = z
  .strictObject({ name: name.optional(), ...nullable(others) })
  .meta({ id: 'VesselChange' });
export type VesselChange = z.infer<typeof VesselChange>;

export const Vessel = z
  .object({ id: Id, ...particulars, schemes: z.array(SchemeCode), timeZone: z.string(), createdAt: Instant, version: z.int() })
  .meta({ id: 'Vessel' });
export type Vessel = z.infer<typeof Vessel>;

export const VesselPage = pageOf(Vessel, 'VesselPage');

function nullable<T extends Record<string, z.ZodOptional<z.ZodType>>>(shape: T) {
  return Object.fromEntries(Object.entries(shape).map(([key, field]) => [key, field.unwrap().nullish()])) as {
    [K in keyof T]: z.ZodOptional<z.ZodNullable<ReturnType<T[K]['unwrap']>>>;
  };
}
