/** Published and recomputed cases of vessel identifiers, from tests/cases/identifiers. */
import { readFileSync } from 'node:fs';
import { bitsOf, hexToBinary } from '@garboard/domain/vessel/identifier/beacon-bits.ts';
import { decodeBeaconId } from '@garboard/domain/vessel/identifier/beacon-id.ts';
import { decodeBeaconMessage } from '@garboard/domain/vessel/identifier/beacon-message.ts';
import { decodeCallSign } from '@garboard/domain/vessel/identifier/call-sign.ts';
import type { Decoded, NotOne } from '@garboard/domain/vessel/identifier/decoded.ts';
import { decodeHullNumber } from '@garboard/domain/vessel/identifier/hull-number.ts';
import { decodeImoNumber } from '@garboard/domain/vessel/identifier/imo-number.ts';
import { decodeMmsi } from '@garboard/domain/vessel/identifier/mmsi.ts';
import { describe, expect, it } from 'vitest';

type Case<Input, Expect> = {
  readonly case: string;
  readonly title: string;
  readonly publication: string;
  readonly clause: string;
  readonly input: Input;
  readonly expect: Expect;
};
/** The parts of the decode; `doubt` is part of its only doubt, and without it there is none; `why` is how the reason begins. */
type Expectation = { readonly kind: string; readonly why?: string; readonly doubt?: string };
type BitsInput = { readonly hex: string; readonly from: number; readonly to: number };

function casesIn<Input, Expect>(file: string): readonly Case<Input, Expect>[] {
  return JSON.parse(readFileSync(new URL(`../../cases/identifiers/${file}.json`, import.meta.url), 'utf8'));
}

const DECODERS: readonly [file: string, count: number, decode: (text: string) => Decoded<object> | NotOne][] = [
  ['hin', 18, decodeHullNumber],
  ['imo', 16, decodeImoNumber],
  ['mmsi', 18, decodeMmsi],
  ['call-sign', 16, decodeCallSign],
  ['beacon-id', 15, decodeBeaconId],
  ['beacon-message', 1, decodeBeaconMessage],
];

describe.each(DECODERS)('%s', (file, count, decode) => {
  const cases = casesIn<string, Expectation>(file);

  it(`has its ${count} cases, each with a source`, () => {
    expect(new Set(cases.map((each) => each.case)).size).toBe(count);
    expect(cases.filter(({ publication, clause }) => !publication || !clause)).toEqual([]);
  });

  it.each(cases)('$case $input: $title', ({ input, expect: { why, doubt, ...parts } }) => {
    const read = decode(input);
    expect(read).toMatchObject(parts);
    if (read.kind === 'not_one') expect(read.why.startsWith(why ?? '')).toBe(true);
    else expect(read.doubts).toEqual(doubt === undefined ? [] : [expect.stringContaining(doubt)]);
  });
});

it.each(casesIn<BitsInput, { readonly bits: string }>('beacon-bits'))(
  '$case: $title',
  ({ input, expect: { bits } }) => {
    expect(bitsOf(hexToBinary(input.hex), 26).text(input.from, input.to)).toBe(bits);
  },
);
