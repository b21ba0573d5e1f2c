import { describe, expect, it } from 'vitest';
import { readSerials } from './read-serials.ts';

describe('readSerials', () => {
  it.each([
    ['AB1200 – AB1399', [{ from: 'AB1200', to: 'AB1399' }]],
    ['AB1200–AB1399', [{ from: 'AB1200', to: 'AB1399' }]],
    ['AB1200 - AB1399', [{ from: 'AB1200', to: 'AB1399' }]],
    ['AB1200 to AB1399', [{ from: 'AB1200', to: 'AB1399' }]],
    ['from AB1200 to AB1399', [{ from: 'AB1200', to: 'AB1399' }]],
    ['24-0100 – 24-0199', [{ from: '24-0100', to: '24-0199' }]],
    ['AB-1500', [{ from: 'AB-1500', to: 'AB-1500' }]],
    ['from AB2000', [{ from: 'AB2000' }]],
    ['AB2000 and later', [{ from: 'AB2000' }]],
    ['up to 99', [{ to: '99' }]],
    [
      'AB1, AB3\nAB5–AB9',
      [
        { from: 'AB1', to: 'AB1' },
        { from: 'AB3', to: 'AB3' },
        { from: 'AB5', to: 'AB9' },
      ],
    ],
    ['', []],
  ])('reads %j', (typed, ranges) => {
    expect(readSerials(typed)).toEqual({ kind: 'read', ranges });
  });

  it.each(['AB1 – AB2 – AB3', '–', 'from –'])('says which line it cannot read: %j', (typed) => {
    expect(readSerials(`AB1\n${typed}`)).toEqual({ kind: 'fault', line: typed });
  });
});
