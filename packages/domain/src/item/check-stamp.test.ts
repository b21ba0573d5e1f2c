import { describe, expect, it } from 'vitest';
import { fact, owedUnder, type Question } from './facts.test-support.ts';

const flare = (...facts: Question['facts'] & object) =>
  owedUnder('pyro-us-rec', {
    kind: 'parachute_rocket_flare',
    schemes: ['us_recreational'],
    facts,
  }).explanation.doubts.filter((doubt) => doubt.includes('stamp'));

const made = fact('manufactured', '2023-03');

describe('a flare made in March 2023', () => {
  it('may be stamped to September 2026', () => {
    expect(flare(made, fact('printed_expiry', '2026-09'))).toEqual([]);
  });

  it('is in doubt when it is stamped a month later', () => {
    expect(flare(made, fact('printed_expiry', '2026-10'))).toEqual([
      'It is stamped 2026-10; the latest stamp allowed is September 2026, as a flare approved in the United States is stamped to expire no later than 42 months after its month of manufacture (46 CFR 160.036-5(b); 160.024-5(b)).',
    ]);
  });

  it('shows the latest stamp allowed while none is on record', () => {
    expect(flare(made)).toEqual([expect.stringContaining('the latest stamp allowed is September 2026')]);
  });
});

it('is not checked without a month of manufacture, nor under another scheme', () => {
  expect(flare(fact('printed_expiry', '2036-10'))).toEqual([]);
  const facts = [made, fact('printed_expiry', '2027-03')];
  expect(
    owedUnder('pyro-solas', { kind: 'parachute_rocket_flare', schemes: ['solas'], facts }).explanation.doubts,
  ).toEqual([]);
});
