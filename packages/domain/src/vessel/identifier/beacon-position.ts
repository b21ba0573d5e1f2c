/**
 * The 15-character id of a beacon that sends its position is written as if it knew none: fixed bits stand where the
 * position of the moment goes.
 *
 * Standard location: Cospas-Sarsat beacon coding guide, read. Return link and national location: second-hand, from the
 * decoder that the Australian Maritime Safety Authority publishes.
 */
const STANDARD = '011111111101111111111';
const HALF_DEGREES = '0111111110111111111';
const NATIONAL = '011111110000001111111100000';

/** By the four bits of the location protocol; the rest are standard. */
const NO_POSITION: Readonly<Record<string, string>> = {
  '1000': NATIONAL,
  '1001': HALF_DEGREES,
  '1010': NATIONAL,
  '1011': NATIONAL,
  '1101': HALF_DEGREES,
  '1111': NATIONAL,
};

/** `sixty` are the bits 26 to 85. A user protocol has no position among them. */
export function withoutPosition(sixty: string): string {
  if (sixty.startsWith('1')) return sixty;
  const end = NO_POSITION[sixty.slice(11, 15)] ?? STANDARD;
  return sixty.slice(0, 60 - end.length) + end;
}
