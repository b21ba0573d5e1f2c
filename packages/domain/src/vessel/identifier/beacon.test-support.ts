/** An encoder of beacon ids for tests, written apart from the decoder. */
const BAUDOT_DIGITS = [
  '001101',
  '011101',
  '011001',
  '010000',
  '001010',
  '000001',
  '010101',
  '011100',
  '001100',
  '000011',
];

const bits = (value: number, width: number) => value.toString(2).padStart(width, '0');

export function hexOf(binary: string): string {
  return BigInt(`0b${binary}`)
    .toString(16)
    .toUpperCase()
    .padStart(binary.length / 4, '0');
}

export function locationWithMmsi(mid: number, tail: number, beacon = 0, position = '011111111101111111111'): string {
  return hexOf(`0${bits(mid, 10)}0010${bits(tail, 20)}${bits(beacon, 4)}${position}`);
}

export function maritimeUser(mid: number, sixDigits: string): string {
  const ident = [...sixDigits].map((digit) => BAUDOT_DIGITS[Number(digit)]).join('');
  return hexOf(`1${bits(mid, 10)}010${ident}001101${'00'}01`);
}

export function returnLinkWithMmsi(mid: number, tail: number): string {
  return hexOf(`0${bits(mid, 10)}1101${'00'}1111${bits(tail, 20)}0111111110111111111`);
}

/** "WDA2000" and the like: four letters or digits given as their codes, three digits as binary. */
export function radioCallSign(mid: number, fourCodes: readonly string[], threeDigits: readonly number[]): string {
  const digits = threeDigits.map((digit) => bits(digit, 4)).join('');
  return hexOf(`1${bits(mid, 10)}110${fourCodes.join('')}${digits}001101${'00'}01`);
}

/** Of type approval 231 and serial number 573. */
export function secondGeneration(mid: number, vessel: string): string {
  return hexOf(`1${bits(mid, 10)}101${bits(231, 16)}${bits(573, 14)}0${vessel.padEnd(47, '0')}`);
}
