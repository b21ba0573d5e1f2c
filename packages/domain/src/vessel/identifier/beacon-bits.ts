/** The bits of a 406 MHz beacon: written as a string of 0 and 1, numbered as Cospas-Sarsat numbers them, from 1. */

export type Bits = {
  /** The bits `from` to `to`, both included. */
  readonly text: (from: number, to: number) => string;
  readonly number: (from: number, to: number) => number;
};

/** `first` is the number of the first bit: 26 in a 15-character id, 25 in a message, 1 in a 23-character id. */
export function bitsOf(binary: string, first: number): Bits {
  const text = (from: number, to: number) => binary.slice(from - first, to - first + 1);
  return { text, number: (from, to) => Number.parseInt(text(from, to), 2) };
}

export function hexToBinary(hex: string): string {
  return [...hex].map((digit) => Number.parseInt(digit, 16).toString(2).padStart(4, '0')).join('');
}

/** Whole groups of four; a rest at the end is left out. */
export function binaryToHex(binary: string): string {
  return (binary.match(/.{4}/g) ?? []).map((four) => Number.parseInt(four, 2).toString(16).toUpperCase()).join('');
}

const MODIFIED_BAUDOT =
  'A111000 B110011 C101110 D110010 E110000 F110110 G101011 H100101 I101100 J111010 K111110 L101001 M100111 N100110 ' +
  'O100011 P101101 Q111101 R101010 S110100 T100001 U111100 V101111 W111001 X110111 Y110101 Z110001 -011000 /010111 ' +
  '0001101 1011101 2011001 3010000 4001010 5000001 6010101 7011100 8001100 9000011';
const CHARACTER = new Map([
  ['100100', ' '],
  ...MODIFIED_BAUDOT.split(' ').map((entry) => [entry.slice(1), entry.charAt(0)] as const),
]);

/**
 * Text in the modified Baudot code, six bits a character; `?` where six bits are no character. Code as in two public
 * decoders, one of them of the Australian Maritime Safety Authority, which agree. Status: second-hand.
 */
export function readBaudot(binary: string): string {
  return (binary.match(/.{6}/g) ?? []).map((six) => CHARACTER.get(six) ?? '?').join('');
}
