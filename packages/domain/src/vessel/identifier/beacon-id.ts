/**
 * The id of a 406 MHz beacon: 15 hexadecimal characters (bits 26 to 85 of its message), or 23 of the second generation.
 *
 * Cospas-Sarsat beacon coding guide, read: bit 26 tells location from user protocol, bits 27 to 36 are the country. The
 * id has no check digit: what can be checked is its length, its country, and the MMSI or call sign inside.
 */
import { bitsOf, hexToBinary } from './beacon-bits.ts';
import { decodeBeaconMessage, MESSAGE_LENGTH } from './beacon-message.ts';
import { withoutPosition } from './beacon-position.ts';
import { type Country, countryOfMid } from './country.ts';
import { type Decoded, type NotOne, notOne } from './decoded.ts';
import { type Protocol, readProtocol } from './first-generation-protocol.ts';
import { readSecondGeneration, type SecondGeneration } from './second-generation-id.ts';

type Common = { readonly hex: string; readonly country: Country };

/** `carriesPosition`: where an id of a location protocol has the bits for "none", other bits stand. */
type FirstGeneration = Protocol & { readonly generation: 'first'; readonly carriesPosition: boolean };

export type BeaconId = Decoded<Common & (FirstGeneration | SecondGeneration)>;

export function decodeBeaconId(text: string): BeaconId | NotOne {
  const hex = text.trim().toUpperCase();
  if (!/^[\dA-F]*$/.test(hex)) {
    return notOne('The id of a beacon is hexadecimal: the digits, and the letters A to F, with nothing between them.');
  }
  if (hex.length === MESSAGE_LENGTH) return notOne(wholeMessage(hex));
  if (hex.length === 15) return firstGeneration(hex);
  if (hex.length === 23) return secondGeneration(hex);
  return notOne(`It has ${hex.length} characters; the id of a beacon has 15, of a second-generation beacon 23.`);
}

function firstGeneration(hex: string): BeaconId | NotOne {
  const bits = bitsOf(hexToBinary(hex), 26);
  const country = countryOfMid(bits.number(27, 36));
  if (!country) return noCountry(bits.number(27, 36));
  const protocol = readProtocol(bits, country.mid);
  const sixty = bits.text(26, 85);
  const carriesPosition = withoutPosition(sixty) !== sixty;
  const doubts = [...country.doubts, ...protocol.doubts, ...doubtsOfBits(sixty, carriesPosition)];
  return { kind: 'decoded', generation: 'first', hex, country, ...protocol, carriesPosition, doubts };
}

function doubtsOfBits(sixty: string, carriesPosition: boolean): string[] {
  if (/^(0*|1*)$/.test(sixty.slice(15))) return ['All bits of the identity are the same: was it ever coded?'];
  return carriesPosition
    ? ['It carries a position; an id is written without one, so it may be cut from a transmitted message.']
    : [];
}

function secondGeneration(hex: string): BeaconId | NotOne {
  const bits = bitsOf(hexToBinary(hex), 1);
  const country = countryOfMid(bits.number(2, 11));
  if (!country) return noCountry(bits.number(2, 11));
  const second = readSecondGeneration(bits);
  return { kind: 'decoded', hex, country, ...second, doubts: [...country.doubts, ...second.doubts] };
}

function noCountry(mid: number): NotOne {
  return notOne(`Its country code is ${mid}; country codes run from 200 to 799.`);
}

function wholeMessage(hex: string): string {
  const message = decodeBeaconMessage(hex);
  const id = message.kind === 'decoded' ? `its id is ${message.id}.` : message.why;
  return `This is a whole message of ${MESSAGE_LENGTH} characters, not an id: ${id}`;
}
