import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decodeImoNumber } from './imo-number.ts';

/** Written out again, apart from the code under test. */
function withCheckDigit(six: string): string {
  const [a, b, c, d, e, f] = [...six].map(Number) as [number, number, number, number, number, number];
  return six + String((7 * a + 6 * b + 5 * c + 4 * d + 3 * e + 2 * f) % 10);
}

const sixDigits = fc.stringMatching(/^[1-9]\d{5}$/);
/** An error that the scheme misses adds a multiple of ten to the sum: weight 5 by an even number, 6, 4 and 2 by five. */
const misses = (place: number, by: number) =>
  (place === 2 && by % 2 === 0) || ([1, 3, 5].includes(place) && Math.abs(by) === 5);

describe('an IMO number', () => {
  it('is read back with the check digit that was put on it, with or without IMO before it', () => {
    fc.assert(
      fc.property(sixDigits, fc.constantFrom('', 'IMO', 'IMO ', 'imo '), (six, before) => {
        const number = withCheckDigit(six);
        expect(decodeImoNumber(before + number)).toMatchObject({ kind: 'decoded', number, doubts: [] });
      }),
    );
  });

  it('with one wrong digit is refused wherever the scheme can see it, and only there', () => {
    const place = fc.integer({ min: 0, max: 6 });
    fc.assert(
      fc.property(sixDigits, place, fc.integer({ min: 1, max: 9 }), (six, at, turn) => {
        const right = withCheckDigit(six);
        const digit = (Number(right[at]) + turn) % 10;
        fc.pre(at > 0 || digit > 0);
        const wrong = right.slice(0, at) + String(digit) + right.slice(at + 1);
        const seen = !misses(at, digit - Number(right[at]));
        expect(decodeImoNumber(wrong).kind).toBe(seen ? 'not_one' : 'decoded');
      }),
      { numRuns: 2000 },
    );
  });

  it('says which digit the first six ask for', () => {
    expect(decodeImoNumber('9074720')).toEqual({
      kind: 'not_one',
      why: 'Check digit: the first six digits ask for 9 at the end, not 0.',
    });
  });

  it.each(['0000000', '0123450', '0999998'])('does not begin with nought: %s', (text) => {
    expect(decodeImoNumber(text)).toMatchObject({ why: expect.stringContaining('begin at 1000000') });
  });
});
