/** The charter operator's list. Invented, like everything else here. */
import type { Boat } from './boat.ts';
import { hullNumber } from './hull-number.ts';

const HERS = {
  carries: 'cruisingYacht',
  material: 'GRP',
  rig: 'masthead sloop',
  homePort: 'Wrackholm',
  schemes: ['uk_small_commercial', 'solas', 'insurer'],
} as const;

const thirtyFour = (name: string, ageYears: number): Boat => ({
  ...HERS,
  name,
  type: '34-foot cruiser',
  ageYears,
  lengthM: 10.3,
  beamM: 3.4,
  draughtM: 1.8,
  persons: 6,
  worth: { minor: 7_900_000 - ageYears * 210_000, currency: 'GBP' },
});

const thirtyNine = (name: string, ageYears: number): Boat => ({
  ...thirtyFour(name, ageYears),
  type: '39-foot cruiser',
  lengthM: 11.9,
  beamM: 3.9,
  draughtM: 2.0,
  persons: 8,
  worth: { minor: 13_800_000 - ageYears * 420_000, currency: 'GBP' },
});

const ketch = (name: string, ageYears: number): Boat => ({
  ...thirtyNine(name, ageYears),
  type: '44-foot ketch',
  rig: 'ketch',
  lengthM: 13.4,
  beamM: 4.2,
  draughtM: 1.9,
  persons: 10,
});

export const CHARTER_BOATS: readonly Boat[] = [
  {
    ...thirtyFour('Samphire', 17),
    identifiers: (built) => ({ hin: hullNumber('00017', built), mmsi: '232987601', callSign: 'MZQX7' }),
  },
  // Her hull says three years less than the register: somebody has to look.
  { ...thirtyFour('Tansy', 12), identifiers: (built) => ({ hin: hullNumber('00042', built - 3), mmsi: '232987602' }) },
  thirtyFour('Milkwort', 12),
  thirtyFour('Eyebright', 6),
  thirtyFour('Lovage', 6),
  thirtyNine('Saxifrage', 14),
  thirtyNine('Silverweed', 9),
  thirtyNine('Sea Campion', 9),
  { ...thirtyNine('Bog Myrtle', 4), schemes: ['uk_small_commercial', 'offshore_racing', 'bs5306', 'insurer'] },
  { ...thirtyNine('Sweet Gale', 4), schemes: ['uk_small_commercial', 'offshore_racing', 'bs5306', 'insurer'] },
  { ...ketch('Angelica', 23), identifiers: (built) => ({ hin: hullNumber('00003', built), callSign: 'MZQX9' }) },
  ketch('Sea Lavender', 19),
];
