/** How serial numbers are written and compared: common practice, no source. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isReversed, type SerialRange, serialInRange, serialWithin } from './serial-range.ts';

const range = (from: string | null, to: string | null): SerialRange => ({ from, to });
const alone = (serial: string) => range(serial, serial);

describe('serialInRange', () => {
  it.each([
    ['a number within', '1250', range('1200', '1399'), 'in'],
    ['a number without', '1400', range('1200', '1399'), 'out'],
    ['a number with leading noughts', '01250', range('1200', '1399'), 'in'],
    ['numbers by what they count, not by their letters', '1000', range('999', '1001'), 'in'],
    ['letters before the number', 'AB1250', range('AB1200', 'AB1399'), 'in'],
    ['case, spaces and hyphens', 'ab 12-50', range('AB12-00', 'AB12-99'), 'in'],
    ['a hyphen left out', 'AB-1250', range('AB1200', 'AB1399'), 'in'],
    ['a year before the number', '24-0133', range('24-0100', '24-0199'), 'in'],
    ['a year run into the number', '240133', range('24-0100', '24-0199'), 'in'],
    ['another year', '25-0133', range('24-0100', '24-0199'), 'out'],
    ['letters after the number', 'M77B', range('M10B', 'M99B'), 'in'],
    ['other letters', 'AC1250', range('AB1200', 'AB1399'), 'out'],
    ['an open end', 'AB9999', range('AB1200', null), 'in'],
    ['below an open end', 'AB1199', range('AB1200', null), 'out'],
    ['an open beginning', 'AB7', range(null, 'AB1200'), 'in'],
    ['one number', 'AB1500', alone('AB1500'), 'in'],
    ['beside one number', 'AB1501', alone('AB1500'), 'out'],
    ['one mark without a number', 'QUILL', alone('quill'), 'in'],
    ['another mark without a number', 'HERON', alone('quill'), 'out'],
  ] as const)('reads %s', (_, serial, asked, expected) => {
    expect(serialInRange(serial, asked)).toBe(expected);
  });

  it.each([
    ['the letters may have been left out', '1250', range('AB1200', 'AB1399')],
    ['a word may have been written before it', 'SN AB1250', range('AB1200', 'AB1399')],
    ['a letter may have been left out after it', 'M77', range('M10B', 'M99B')],
    ['the year may have been left out', '0133', range('24-0100', '24-0199')],
    ['it holds no number', 'illegible', range('AB1200', 'AB1399')],
    ['the ends are of two patterns', 'AB1250', range('AB1200', 'AC0100')],
    ['an end holds no number', 'AB1250', range('AB1200', 'ZZZ')],
  ] as const)('cannot tell where %s', (_, serial, asked) => {
    expect(serialInRange(serial, asked)).toBe('cannot_tell');
  });

  it('counts both ends in, whatever stands before and after the number', () => {
    fc.assert(
      fc.property(anyPattern, fc.nat(99_999), fc.nat(99_999), ({ before, after }, a, b) => {
        const [low, high] = [Math.min(a, b), Math.max(a, b)].map((n) => `${before}${n}${after}`);
        const asked = range(low ?? '', high ?? '');
        expect([low, high].map((serial) => serialInRange(serial ?? '', asked))).toEqual(['in', 'in']);
        expect(isReversed(asked)).toBe(false);
      }),
      { seed: 11 },
    );
  });

  it('agrees with counting, for numbers of one pattern', () => {
    fc.assert(
      fc.property(anyPattern, fc.nat(300), fc.nat(300), fc.nat(300), ({ before, after }, n, a, b) => {
        const [low, high] = [Math.min(a, b), Math.max(a, b)];
        const written = (number: number) => `${before}${number}${after}`;
        expect(serialInRange(written(n), range(written(low), written(high)))).toBe(
          low <= n && n <= high ? 'in' : 'out',
        );
      }),
      { seed: 12 },
    );
  });

  it('never takes for outside what is inside once something written is left out', () => {
    fc.assert(
      fc.property(anyPattern, fc.integer({ min: 1200, max: 1399 }), ({ before, after }, n) => {
        const asked = range(`${before}1200${after}`, `${before}1399${after}`);
        for (const less of [`${n}`, `${n}${after}`, `${before}${n}`])
          expect(serialInRange(less, asked)).not.toBe('out');
      }),
      { seed: 13 },
    );
  });
});

describe('serialWithin', () => {
  it('answers alike in whatever order the ranges stand', () => {
    const anyRange = fc.constantFrom(
      range('AB1200', 'AB1399'),
      range('1200', '1399'),
      range('AC1', null),
      range('AB1', 'ZZ'),
      alone('AB1500'),
    );
    const anySerial = fc.constantFrom('AB1250', 'AB1500', '1250', 'AC9', 'QX1', 'illegible');
    fc.assert(
      fc.property(anySerial, fc.uniqueArray(anyRange, { minLength: 1 }), fc.nat(), (serial, ranges, turn) => {
        const turned = [...ranges.slice(turn % ranges.length), ...ranges.slice(0, turn % ranges.length)];
        expect(serialWithin(serial, turned)).toBe(serialWithin(serial, ranges));
        expect(serialWithin(serial, ranges.toReversed())).toBe(serialWithin(serial, ranges));
      }),
      { seed: 14 },
    );
  });

  it('is inside where one range says so, and cannot tell where one cannot', () => {
    expect(serialWithin('AB1250', [range('AB1', 'ZZ'), range('AB1200', 'AB1399')])).toBe('in');
    expect(serialWithin('AB1250', [range('AB1', 'ZZ'), range('AB1', 'AB9')])).toBe('cannot_tell');
  });
});

describe('isReversed', () => {
  it('says so only of two ends of one pattern', () => {
    expect(isReversed(range('AB1399', 'AB1200'))).toBe(true);
    expect(isReversed(range('AB1399', 'AC1200'))).toBe(false);
    expect(isReversed(range('AB1399', null))).toBe(false);
  });
});

const anyPattern = fc.record({
  before: fc.constantFrom('', 'A', 'AB', 'X-', '24-', 'N2-'),
  after: fc.constantFrom('', 'B', '-S'),
});
