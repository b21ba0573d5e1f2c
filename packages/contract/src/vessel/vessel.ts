/** The register: one boat and her particulars. */
import * as z from 'zod';
import { Id, Instant, Money, orNull, pageOf, TimeZone, words } from '../shared.ts';
import { IdentifierNotes } from './identifier.ts';

const SCHEME_CODES = [
  'solas',
  'us_recreational',
  'us_sailing_school',
  'us_small_passenger',
  'us_offshore_supply',
  'us_documentation',
  'canada_lifesaving',
  'uk_small_commercial',
  'uk_workboat',
  'uk_inland',
  'eu_inland',
  'caribbean_small_commercial',
  'harmonised_survey',
  'radio_licence',
  'offshore_racing',
  'bs5306',
  'nfpa10',
  'insurer',
  'maker',
  'common_practice',
  'own',
  'historic',
] as const;
export const SchemeCode = z
  .enum(SCHEME_CODES)
  .meta({ id: 'SchemeCode', description: 'A body of rules that a vessel is kept under: an entry of `/v1/schemes`.' });

const Identifiers = z
  .strictObject({
    hin: words(20).optional().meta({ description: 'Hull identification number.' }),
    imo: words(12).optional(),
    mmsi: words(12).optional(),
    callSign: words(12).optional(),
    officialNumber: words(30).optional(),
  })
  .meta({ id: 'Identifiers' });

const metres = (max: number) => z.number().positive().max(max);

const schemes = z.array(SchemeCode).max(SCHEME_CODES.length);
const name = words(120).meta({ example: 'Marsh Harrier' });

/** What may be unknown of a vessel. */
const known = {
  type: words(80).meta({ example: 'sloop' }),
  builtYear: z.int().min(1800).max(2200),
  lengthOverallM: metres(200).meta({ example: 9.6 }),
  hullMaterial: words(60).meta({ example: 'GRP' }),
  rig: words(60),
  beamM: metres(60),
  draughtM: metres(30),
  waterlineLengthM: metres(200),
  displacementKg: z.number().positive().max(10_000_000),
  personsMax: z.int().min(1).max(1000),
  identifiers: Identifiers,
  value: Money,
  homePort: words(120),
};

const particulars = z.object(known).partial().shape;

export const NewVessel = z
  .strictObject({ name, ...particulars, schemes: schemes.optional(), timeZone: TimeZone.optional() })
  .meta({
    id: 'NewVessel',
    description: 'Without `timeZone` she keeps the organisation’s.',
    example: {
      name: 'Marsh Harrier',
      type: 'sloop',
      builtYear: 1998,
      lengthOverallM: 9.6,
      schemes: ['uk_small_commercial'],
      timeZone: 'Europe/London',
    },
  });
export type NewVessel = z.infer<typeof NewVessel>;

/** A change of particulars: what is absent stays, `null` takes it away. */
export const VesselChange = z
  .strictObject({
    name: name.optional(),
    ...forgettable(known),
    schemes: schemes.optional(),
    timeZone: TimeZone.optional(),
  })
  .meta({
    id: 'VesselChange',
    description: 'What is absent stays; `null` takes it away. `identifiers` and `schemes` are replaced whole.',
    example: { homePort: 'Lymington', rig: null },
  });
export type VesselChange = z.infer<typeof VesselChange>;

export const Vessel = z
  .object({
    id: Id,
    name,
    ...particulars,
    identifierNotes: IdentifierNotes.optional(),
    schemes: z.array(SchemeCode),
    timeZone: TimeZone,
    createdAt: Instant,
    version: z.int(),
  })
  .meta({
    id: 'Vessel',
    example: {
      id: '0198c5a2-7b1e-7c3d-9a41-5f2e8d7c6b5a',
      name: 'Marsh Harrier',
      type: 'sloop',
      builtYear: 1998,
      lengthOverallM: 9.6,
      identifiers: { callSign: 'MABC2' },
      identifierNotes: {
        inWords: ['Call sign: MABC2, of a series of United Kingdom.'],
        doubts: [],
      },
      value: { amount: '18500.00', currency: 'GBP' },
      schemes: ['uk_small_commercial'],
      timeZone: 'Europe/London',
      createdAt: '2026-11-25T08:12:00Z',
      version: 3,
    },
  });
export type Vessel = z.infer<typeof Vessel>;

export const VesselPage = pageOf(Vessel, 'VesselPage');
export type VesselPage = z.infer<typeof VesselPage>;

function forgettable<T extends Record<string, z.ZodType>>(shape: T) {
  return Object.fromEntries(Object.entries(shape).map(([key, field]) => [key, orNull(field).optional()])) as {
    [K in keyof T]: z.ZodOptional<z.ZodUnion<[T[K], z.ZodNull]>>;
  };
}
