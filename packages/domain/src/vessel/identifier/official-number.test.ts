import { describe, expect, it } from 'vitest';
import { decodeOfficialNumber } from './official-number.ts';

describe('an official number', () => {
  it('is kept as written, without the space around it', () => {
    expect(decodeOfficialNumber(' SSR 123456 ')).toEqual({ kind: 'decoded', number: 'SSR 123456', doubts: [] });
  });

  it('without any digit is doubted', () => {
    expect(decodeOfficialNumber('pending')).toMatchObject({ doubts: [expect.stringContaining('no digit')] });
  });

  it.each(['', '   ', '12\u000034'])('cannot be %j', (text) => {
    expect(decodeOfficialNumber(text)).toMatchObject({ kind: 'not_one' });
  });
});
