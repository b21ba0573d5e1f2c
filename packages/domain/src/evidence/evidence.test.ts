import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pieceFault } from './evidence.ts';

describe('a piece of a file', () => {
  it.each([
    ['the first of several', 0, 10, null],
    ['the last', 90, 10, null],
    ['one byte too many', 90, 11, 'has 11 bytes, and the file lacks only 10'],
    ['nothing, while bytes lack', 90, 0, 'is empty'],
    ['nothing, when all is there: the end is asked for again', 100, 0, null],
    ['more, when all is there', 100, 1, 'has 1 bytes, and the file lacks only 0'],
  ])('is judged by what the file lacks: %s', (_, received, piece, fault) => {
    expect(pieceFault({ bytes: 100, received }, piece)).toBe(fault);
  });

  it('never lets a file grow past what was said of it', () => {
    fc.assert(
      fc.property(fc.nat(1000), fc.nat(1000), fc.nat(2000), (bytes, some, piece) => {
        const received = Math.min(bytes, some);
        const fits = pieceFault({ bytes, received }, piece) === null;
        expect(received + piece <= bytes || !fits).toBe(true);
      }),
    );
  });
});
