import fc from 'fast-check';
import { expect, it } from 'vitest';
import { decodeBeaconMessage } from './beacon-message.ts';
import { crossCheck } from './cross-check.ts';
import { describeIdentifiers } from './describe-identifiers.ts';
import { decodeIdentifiers, type IdentifierTexts } from './identifiers.ts';

const hex = (length: number) => fc.stringMatching(new RegExp(`^[\\dA-F]{${length}}$`));
/** Anything at all, and what is near enough to get further in. */
const garbage = fc.oneof(
  fc.string({ unit: 'binary', maxLength: 40 }),
  fc.stringMatching(/^[A-Z\d]{0,16}$/),
  fc.stringMatching(/^\d{7,9}$/),
  hex(15),
  hex(23),
  hex(30),
);
const field = fc.option(garbage, { nil: undefined });
const texts: fc.Arbitrary<IdentifierTexts> = fc.record({
  hin: field,
  imo: field,
  mmsi: field,
  callSign: field,
  officialNumber: field,
  beaconIds: fc.array(garbage, { maxLength: 3 }),
});
const SENTENCE = /^\S.*[.?]$/s;

it('garbage never throws, and every word about it is a sentence', () => {
  const years = fc.option(fc.integer({ min: 1800, max: 2200 }), { nil: undefined });
  fc.assert(
    fc.property(texts, years, field, (given, builtYear, flagCountry) => {
      const identifiers = decodeIdentifiers(given);
      const said = [...describeIdentifiers(identifiers), ...crossCheck(identifiers, { builtYear, flagCountry })];
      expect(said.filter((words) => !SENTENCE.test(words))).toEqual([]);
      expect(said.join(' ')).not.toMatch(/undefined|NaN/);
    }),
    { numRuns: 3000 },
  );
});

it('a whole message is never taken from garbage without its parity', () => {
  fc.assert(
    fc.property(hex(30), (message) => {
      expect(decodeBeaconMessage(message)).toMatchObject({ kind: 'not_one' });
    }),
  );
});
