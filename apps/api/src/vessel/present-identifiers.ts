/** Identifiers as the domain reads them, for the API: one by one, and as notes beside a vessel's particulars. */
import type { IdentifierNotes, ReadIdentifier } from '@garboard/contract/vessel/identifier.ts';
import type { BeaconId } from '@garboard/domain/vessel/identifier/beacon-id.ts';
import type { Country } from '@garboard/domain/vessel/identifier/country.ts';
import { crossCheck } from '@garboard/domain/vessel/identifier/cross-check.ts';
import { describeIdentifiers } from '@garboard/domain/vessel/identifier/describe-identifiers.ts';
import {
  decodeIdentifiers,
  type Identifiers,
  type IdentifierTexts,
  type Reading,
} from '@garboard/domain/vessel/identifier/identifiers.ts';

/** `null` while there is nothing to say. */
export function identifierNotes(texts: IdentifierTexts, builtYear: number | null): IdentifierNotes | null {
  const identifiers = decodeIdentifiers(texts);
  const inWords = [...describeIdentifiers(identifiers)];
  if (inWords.length === 0) return null;
  return {
    inWords,
    doubts: [...crossCheck(identifiers, { builtYear: builtYear ?? undefined })],
  };
}

/** One entry for each that is given, in the order of a vessel's papers. */
export function presentReadings(identifiers: Identifiers): ReadIdentifier[] {
  const { hin, imo, mmsi, callSign, officialNumber, beaconIds } = identifiers;
  return [
    ...entry('hin', hin, { ...NONE, hin }, (it, said) => ({
      ...it,
      ...said,
      identifier: 'hin',
    })),
    ...entry('imo', imo, { ...NONE, imo }, (it, said) => ({
      ...it,
      ...said,
      identifier: 'imo',
    })),
    ...entry('mmsi', mmsi, { ...NONE, mmsi }, ({ country, ...it }, said) => ({
      ...it,
      ...said,
      identifier: 'mmsi',
      country: country && presentCountry(country),
    })),
    ...entry('callSign', callSign, { ...NONE, callSign }, (it, said) => ({
      ...it,
      ...said,
      identifier: 'callSign',
    })),
    ...entry('officialNumber', officialNumber, { ...NONE, officialNumber }, (it, said) => ({
      ...it,
      ...said,
      identifier: 'officialNumber',
    })),
    ...beaconIds.flatMap((beacon) => entry('beaconId', beacon, { ...NONE, beaconIds: [beacon] }, presentBeacon)),
  ];
}

const NONE: Identifiers = {
  hin: null,
  imo: null,
  mmsi: null,
  callSign: null,
  officialNumber: null,
  beaconIds: [],
};

/** What is said of every one that was decoded. */
type Said = { text: string; inWords: string; doubts: string[] };

function entry<T extends { readonly kind: 'decoded'; readonly doubts: readonly string[] }>(
  identifier: ReadIdentifier['identifier'],
  reading: Reading<T> | null,
  alone: Identifiers,
  present: (decoded: T, said: Said) => ReadIdentifier,
): ReadIdentifier[] {
  if (!reading) return [];
  const { text, read } = reading;
  const inWords = describeIdentifiers(alone).join(' ');
  if (read.kind === 'not_one') return [{ identifier, text, inWords, ...read }];
  return [present(read, { text, inWords, doubts: [...read.doubts] })];
}

function presentCountry({ mid, name, partOf }: Country) {
  return { mid, name, partOf };
}

/** The domain's words of a beacon are those of its protocol; here they stand apart from the whole sentence. */
function presentBeacon(beacon: BeaconId, said: Said): ReadIdentifier {
  const country = presentCountry(beacon.country);
  switch (beacon.generation) {
    case 'first': {
      const { inWords: codedAs, ...rest } = beacon;
      return { ...rest, ...said, codedAs, country, identifier: 'beaconId' };
    }
    case 'second':
      return { ...beacon, ...said, country, identifier: 'beaconId' };
  }
}
