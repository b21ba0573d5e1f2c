/** The identifiers of a vessel, read: what each says, why it cannot be one, and what is doubtful about them together. */
import * as z from 'zod';

const written = (description: string) => z.string().max(100).optional().meta({ description });

export const ReadIdentifiersRequest = z
  .strictObject({
    hin: written('Hull identification number, also with the country before it.'),
    imo: written('IMO ship identification number.'),
    mmsi: written('Maritime mobile service identity.'),
    callSign: written('Call sign of the ship station.'),
    officialNumber: written('What a national register wrote down.'),
    beaconIds: z.array(z.string().max(100)).max(50).default([]).meta({
      description: 'Of the 406 MHz beacons aboard: 15 hexadecimal characters, or 23 of the second generation.',
    }),
    builtYear: z.int().min(1800).max(2200).optional().meta({ description: 'Held against the HIN.' }),
    flagCountry: z.string().max(100).optional().meta({
      description: 'Name of a country, held against the MMSI; a name that is not in our table is not compared.',
    }),
  })
  .meta({
    id: 'ReadIdentifiersRequest',
    description: 'Each as it is written; what is absent is not known.',
    example: {
      hin: 'GB-QZX00042C898',
      mmsi: '232123456',
      beaconIds: ['9D09D65028154D1'],
      builtYear: 2001,
    },
  });
export type ReadIdentifiersRequest = z.infer<typeof ReadIdentifiersRequest>;

const read = {
  text: z.string().meta({ description: 'As it was given.' }),
  inWords: z.string().meta({ description: 'What it says, as a sentence.' }),
};
const decoded = {
  ...read,
  kind: z.literal('decoded'),
  doubts: z.array(z.string()).meta({ description: 'What is doubtful about it by itself.' }),
};

const Country = z
  .object({
    mid: z.int().meta({ description: 'Three maritime identification digits.' }),
    name: z.string().nullable().meta({
      description: '`null` where our table does not know the digits.',
    }),
    partOf: z.string().nullable().meta({ description: 'For a territory, the state that it belongs to.' }),
  })
  .meta({ id: 'IdentifiedCountry' });

const NotOne = z
  .object({
    identifier: z.enum(['hin', 'imo', 'mmsi', 'callSign', 'officialNumber', 'beaconId']),
    ...read,
    kind: z.literal('not_one'),
    why: z.string(),
  })
  .meta({
    id: 'NotAnIdentifier',
    description: 'A check digit or the form makes it impossible.',
  });

const Hin = z
  .object({
    identifier: z.literal('hin'),
    ...decoded,
    number: z.string(),
    country: z.string().nullable().meta({ description: 'Two letters as written.' }),
    maker: z.string(),
    serial: z.string(),
    form: z.enum(['current', 'straight_year', 'model_year']),
    built: z.object({ year: z.int(), month: z.int() }),
    modelYear: z.int().nullable(),
  })
  .meta({ id: 'HullNumber' });

const Imo = z
  .object({
    identifier: z.literal('imo'),
    ...decoded,
    number: z.string(),
    weightedSum: z.int(),
  })
  .meta({ id: 'ImoNumber' });

const Mmsi = z
  .object({
    identifier: z.literal('mmsi'),
    ...decoded,
    digits: z.string(),
    station: z.enum([
      'ship_station',
      'group_of_ships',
      'coast_station',
      'sar_aircraft',
      'craft_of_parent',
      'aid_to_navigation',
      'handheld_vhf',
      'ais_sart',
      'man_overboard',
      'epirb_ais',
    ]),
    country: z.union([Country, z.null()]).meta({ description: '`null` where the form carries none.' }),
  })
  .meta({ id: 'Mmsi' });

const CallSign = z
  .object({
    identifier: z.literal('callSign'),
    ...decoded,
    sign: z.string(),
    state: z.string().nullable().meta({ description: '`null` where no series of our table has it.' }),
  })
  .meta({ id: 'CallSign' });

const OfficialNumber = z
  .object({
    identifier: z.literal('officialNumber'),
    ...decoded,
    number: z.string(),
  })
  .meta({
    id: 'OfficialNumber',
    description: 'Kept as written: each register has a form of its own.',
  });

const beacon = {
  identifier: z.literal('beaconId'),
  ...decoded,
  hex: z.string(),
  country: Country,
  mmsi: z.string().nullable(),
  callSign: z.string().nullable(),
};

const FirstGeneration = z
  .object({
    ...beacon,
    generation: z.literal('first'),
    protocol: z.enum(['location_with_mmsi', 'return_link_with_mmsi', 'maritime_user', 'radio_call_sign_user', 'other']),
    flag: z.enum(['location', 'user']),
    code: z.string().meta({
      description: 'Four bits of a location protocol, three of a user protocol.',
    }),
    codedAs: z.string().nullable().meta({
      description: 'The protocol in words; `null` where it is not known to us.',
    }),
    beacon: z.string().nullable().meta({ description: 'Tells several beacons of one vessel apart.' }),
    homing: z.string().nullable().meta({ description: 'Bits 84 and 85, where a user protocol has them.' }),
    carriesPosition: z.boolean(),
  })
  .meta({ id: 'FirstGenerationBeacon' });

const SecondGeneration = z
  .object({
    ...beacon,
    generation: z.literal('second'),
    typeApproval: z.int(),
    serial: z.int(),
    test: z.boolean(),
  })
  .meta({ id: 'SecondGenerationBeacon' });

export const ReadIdentifier = z
  .union([NotOne, Hin, Imo, Mmsi, CallSign, OfficialNumber, FirstGeneration, SecondGeneration])
  .meta({
    id: 'ReadIdentifier',
    description: 'Told apart by `kind`, `identifier` and, for beacons, `generation`.',
  });
export type ReadIdentifier = z.infer<typeof ReadIdentifier>;

export const ReadIdentifiers = z
  .object({
    identifiers: z.array(ReadIdentifier).meta({ description: 'In the order of a vessel’s papers.' }),
    doubts: z.array(z.string()).meta({
      description: 'Sentences: what is doubtful about each, and where one does not agree with another. None refuses.',
    }),
  })
  .meta({
    id: 'ReadIdentifiers',
    example: {
      identifiers: [
        {
          identifier: 'imo',
          text: '9074720',
          inWords: 'IMO number: 9074720 cannot be one.',
          kind: 'not_one',
          why: 'Check digit: the first six digits ask for 9 at the end, not 0.',
        },
      ],
      doubts: ['IMO number 9074720 cannot be one. Check digit: the first six digits ask for 9 at the end, not 0.'],
    },
  });
export type ReadIdentifiers = z.infer<typeof ReadIdentifiers>;

/** What a vessel’s identifiers say and where they do not agree, beside her particulars. */
export const IdentifierNotes = z.object({ inWords: z.array(z.string()), doubts: z.array(z.string()) }).meta({
  id: 'IdentifierNotes',
  description: 'Read-only. Absent while no identifier is given.',
});
export type IdentifierNotes = z.infer<typeof IdentifierNotes>;
