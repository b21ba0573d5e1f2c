import { describe, expect, it } from 'vitest';
import { fromMinor, toMinor } from './money.ts';

describe('money', () => {
  it.each([
    ['0', 0, '0.00'],
    ['0.5', 50, '0.50'],
    ['0.05', 5, '0.05'],
    ['1234.50', 123_450, '1234.50'],
    ['1000', 100_000, '1000.00'],
    ['9999999999999.99', 999_999_999_999_999, '9999999999999.99'],
  ])('keeps %s exactly', (amount, minor, shown) => {
    expect(toMinor({ amount, currency: 'EUR' })).toEqual({ minor, currency: 'EUR' });
    expect(fromMinor({ minor, currency: 'EUR' })).toEqual({ amount: shown, currency: 'EUR' });
  });
});
