/** House convention, no source: makers and dealers write one name in many ways. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { likeness, likenessToAny } from './likeness.ts';

describe('likeness', () => {
  it.each([
    ['Nord-Hav 25', 'NORDHAV25', 'same'],
    ['Fjörd & Søn', 'FJORD SØN', 'same'],
    ['Nordhav', 'Nordhav Marine Ltd', 'perhaps'],
    ['Marine Nordhav', 'Nordhav', 'perhaps'],
    ['Marine Fjörd', 'Fjord', 'perhaps'],
    ['X150', 'X-150 S', 'perhaps'],
    ['Nordhav', 'Sudhav', 'other'],
    ['X150', 'X151', 'other'],
  ] as const)('takes %s and %s for %s', (a, b, expected) => {
    expect(likeness(a, b)).toBe(expected);
    expect(likeness(b, a)).toBe(expected);
  });

  it('takes a name for the same as itself, however it is spaced and cased', () => {
    fc.assert(
      fc.property(fc.stringMatching(/^[a-z0-9]{1,12}$/), (name) => {
        expect(likeness(name, ` ${name.toUpperCase().split('').join('-')}`)).toBe('same');
      }),
      { seed: 7 },
    );
  });

  it('lets one that is the same count before others', () => {
    expect(likenessToAny('Nordhav', ['Sudhav', 'Nordhav Ltd', 'NORD HAV'])).toBe('same');
    expect(likenessToAny('Nordhav', ['Sudhav', 'Nordhav Ltd'])).toBe('perhaps');
  });
});
