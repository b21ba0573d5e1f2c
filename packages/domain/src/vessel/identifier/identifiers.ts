/** All identifiers of one vessel, each as written and as decoded. */
import { type BeaconId, decodeBeaconId } from './beacon-id.ts';
import { type CallSign, decodeCallSign } from './call-sign.ts';
import type { NotOne } from './decoded.ts';
import { decodeHullNumber, type HullNumber } from './hull-number.ts';
import { decodeImoNumber, type ImoNumber } from './imo-number.ts';
import { decodeMmsi, type Mmsi } from './mmsi.ts';
import { decodeOfficialNumber, type OfficialNumber } from './official-number.ts';

/** As somebody wrote them down; what is absent is not known. `beaconIds` are of the 406 MHz beacons aboard. */
export type IdentifierTexts = {
  readonly hin?: string | undefined;
  readonly imo?: string | undefined;
  readonly mmsi?: string | undefined;
  readonly callSign?: string | undefined;
  readonly officialNumber?: string | undefined;
  readonly beaconIds?: readonly string[] | undefined;
};

export type Reading<T> = { readonly text: string; readonly read: T | NotOne };

/** `null`: not given. */
export type Identifiers = {
  readonly hin: Reading<HullNumber> | null;
  readonly imo: Reading<ImoNumber> | null;
  readonly mmsi: Reading<Mmsi> | null;
  readonly callSign: Reading<CallSign> | null;
  readonly officialNumber: Reading<OfficialNumber> | null;
  readonly beaconIds: readonly Reading<BeaconId>[];
};

export function decodeIdentifiers(texts: IdentifierTexts): Identifiers {
  return {
    hin: reading(texts.hin, decodeHullNumber),
    imo: reading(texts.imo, decodeImoNumber),
    mmsi: reading(texts.mmsi, decodeMmsi),
    callSign: reading(texts.callSign, decodeCallSign),
    officialNumber: reading(texts.officialNumber, decodeOfficialNumber),
    beaconIds: (texts.beaconIds ?? []).map((text) => ({ text, read: decodeBeaconId(text) })),
  };
}

function reading<T>(text: string | undefined, decode: (text: string) => T | NotOne): Reading<T> | null {
  return text === undefined ? null : { text, read: decode(text) };
}

/** What was decoded; `null` when it was not given, or cannot be one. */
export function decodedOf<T extends { readonly kind: 'decoded' }>(of: Reading<T> | null): T | null {
  return of?.read.kind === 'decoded' ? of.read : null;
}
