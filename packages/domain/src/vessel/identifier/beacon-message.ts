/**
 * A whole transmitted message of a first-generation beacon, 30 hexadecimal characters (bits 25 to 144), as a test
 * receiver shows it. It holds the beacon's id and two fields of parity, which the id alone has not.
 *
 * Cospas-Sarsat C/S T.001: a published message reproduced with both parities (bits 86 to 106 over 25 to 85, bits 133 to
 * 144 over 107 to 132). The generators from memory, and the same in the decoder that the Australian Maritime Safety
 * Authority publishes. Status: second-hand.
 */
import { binaryToHex, bitsOf, hexToBinary } from './beacon-bits.ts';
import { withoutPosition } from './beacon-position.ts';
import { type Decoded, type NotOne, notOne } from './decoded.ts';

/** `id` is the beacon's 15-character id; `parities` are the bits of the two fields, both found right. */
export type BeaconMessage = Decoded<{ readonly id: string; readonly parities: readonly [string, string] }>;

export const MESSAGE_LENGTH = 30;

const FIRST_GENERATOR = '1001101101100111100011';
const SECOND_GENERATOR = '1010100111001';

export function decodeBeaconMessage(text: string): BeaconMessage | NotOne {
  const hex = text.trim().toUpperCase();
  if (!/^[\dA-F]{30}$/.test(hex)) return notOne('A long message is 30 hexadecimal characters.');
  const bits = bitsOf(hexToBinary(hex), 25);
  if (bits.text(25, 25) === '0')
    return notOne('It says of itself that it is a short message, and these have fewer characters.');
  const parities = [bits.text(86, 106), bits.text(133, 144)] as const;
  if (parity(bits.text(25, 85), FIRST_GENERATOR) !== parities[0]) return wrongParity('first');
  if (parity(bits.text(107, 132), SECOND_GENERATOR) !== parities[1]) return wrongParity('second');
  return { kind: 'decoded', id: binaryToHex(withoutPosition(bits.text(26, 85))), parities, doubts: [] };
}

function wrongParity(field: string): NotOne {
  return notOne(`Its ${field} field of parity does not agree with the rest: a character is wrong.`);
}

/** The remainder of the message, with room for the parity behind it, by the generator: BCH parity. */
function parity(message: string, generator: string): string {
  const width = generator.length - 1;
  const rest = [...message, ...'0'.repeat(width)].map(Number);
  for (let place = 0; place < message.length; place++) {
    if (rest[place] === 0) continue;
    for (let offset = 0; offset <= width; offset++)
      rest[place + offset] = (rest[place + offset] ?? 0) ^ Number(generator[offset]);
  }
  return rest.slice(message.length).join('');
}
