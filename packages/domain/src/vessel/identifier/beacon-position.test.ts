import { describe, expect, it } from 'vitest';
import { withoutPosition } from './beacon-position.ts';

const STANDARD = '011111111101111111111';
const HALF_DEGREES = '0111111110111111111';
const NATIONAL = '011111110000001111111100000';

describe('an id without position', () => {
  it.each([
    ['0010', STANDARD],
    ['0110', STANDARD],
    ['1110', STANDARD],
    ['1001', HALF_DEGREES],
    ['1101', HALF_DEGREES],
    ['1000', NATIONAL],
    ['1010', NATIONAL],
    ['1011', NATIONAL],
    ['1111', NATIONAL],
  ])('of location protocol %s ends on its own fixed bits', (code, end) => {
    const rest = `00011101000${code}${'10'.repeat(22)}1`;
    expect(withoutPosition(rest)).toBe(rest.slice(0, 60 - end.length) + end);
  });

  it('of a user protocol is as it was', () => {
    const sixty = `1${'10'.repeat(29)}1`;
    expect(withoutPosition(sixty)).toBe(sixty);
  });
});
