import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decodeHullNumber } from './hull-number.ts';

const digits = (length: number) => fc.stringMatching(new RegExp(`^\\d{${length}}$`));
const maker = fc.stringMatching(/^[A-Z]{3}$/);
const serial = fc.stringMatching(/^[A-HJ-NPR-Z\d]{5}$/);
const month = fc.integer({ min: 1, max: 12 });
const letterOf = (place: number) => String.fromCharCode('A'.charCodeAt(0) + place);
const twoDigits = (year: number) => String(year % 100).padStart(2, '0');

describe('the current form', () => {
  it('gives back what was encoded, when hull and model lie within two years', () => {
    const year = fc.integer({ min: 1984, max: 2060 });
    fc.assert(
      fc.property(maker, serial, month, year, fc.integer({ min: -2, max: 2 }), (mic, number, m, built, ahead) => {
        const text = `${mic}${number}${letterOf(m - 1)}${built % 10}${twoDigits(built + ahead)}`;
        expect(decodeHullNumber(text)).toEqual({
          kind: 'decoded',
          number: text,
          country: null,
          maker: mic,
          serial: number,
          form: 'current',
          built: { year: built, month: m },
          modelYear: built + ahead,
          doubts: [],
        });
      }),
    );
  });

  it('doubts a year digit that is far from the model year, and still reads it', () => {
    expect(decodeHullNumber('ABC12345A388')).toMatchObject({
      built: { year: 1983 },
      doubts: [expect.stringContaining('within 2 years'), expect.stringContaining('came into use in 1984')],
    });
  });

  it('takes the year from six before the model year to three after it that ends so', () => {
    expect(decodeHullNumber('ABC12345A288')).toMatchObject({ built: { year: 1982 } });
    expect(decodeHullNumber('ABC12345A188')).toMatchObject({
      built: { year: 1991 },
      doubts: [expect.stringContaining('within 2 years')],
    });
  });

  it('reads a model year from 70 on as of the 1900s', () => {
    expect(decodeHullNumber('ABC12345A969')).toMatchObject({ built: { year: 2069 }, modelYear: 2069 });
    expect(decodeHullNumber('ABC12345A070')).toMatchObject({ built: { year: 1970 }, modelYear: 1970 });
  });

  it('knows I as September, although a serial number has no I', () => {
    expect(decodeHullNumber('ABC12345I212')).toMatchObject({ built: { year: 2012, month: 9 } });
    expect(decodeHullNumber('ABC1I345A212')).toMatchObject({ kind: 'not_one', why: expect.stringMatching(/^Serial/) });
  });

  it('refuses a manufacturer code with anything but letters and digits', () => {
    expect(decodeHullNumber('AB*12345A788')).toMatchObject({ why: expect.stringMatching(/^Manufacturer code/) });
  });

  it('doubts a manufacturer code with a digit', () => {
    expect(decodeHullNumber('A1C12345A788')).toMatchObject({
      kind: 'decoded',
      doubts: [expect.stringContaining('A1C has a digit')],
    });
  });
});

describe('the forms of 1972 to 1984', () => {
  it('give back what was encoded, and doubt what lies outside of those years', () => {
    fc.assert(
      fc.property(maker, serial, month, fc.integer({ min: 1970, max: 2000 }), (mic, number, m, year) => {
        const straight = decodeHullNumber(`${mic}${number}${String(m).padStart(2, '0')}${twoDigits(year)}`);
        const inUse = year <= 1984 && (year > 1972 || (year === 1972 && m >= 11));
        expect(straight).toMatchObject({ form: 'straight_year', built: { year, month: m }, modelYear: null });
        expect(straight).toHaveProperty('doubts.length', inUse ? 0 : 1);
      }),
    );
  });

  it('begin in November 1972', () => {
    expect(decodeHullNumber('ABC123451172')).toHaveProperty('doubts', []);
    expect(decodeHullNumber('ABC123451072')).toHaveProperty('doubts', [expect.stringContaining('no standard form')]);
  });

  it('begin the model year in August of the year before', () => {
    const months = [...'ABCDEFGHIJKL'].map((letter) => decodeHullNumber(`ABC12345M79${letter}`));
    expect(months.map((read) => (read.kind === 'decoded' ? [read.built.year, read.built.month] : null))).toEqual([
      ...[8, 9, 10, 11, 12].map((m) => [1978, m]),
      ...[1, 2, 3, 4, 5, 6, 7].map((m) => [1979, m]),
    ]);
  });

  it.each(['ABC12345M79M', 'ABC12345M7A9', 'ABC12345M788', 'ABC12345N79A'])('do not take %s', (text) => {
    expect(decodeHullNumber(text)).toMatchObject({ kind: 'not_one', why: expect.stringMatching(/^Date/) });
  });
});

describe('with the country before it', () => {
  it('reads hyphens between the parts, and writes them away', () => {
    expect(decodeHullNumber(' gb-abc00042-a3-14 ')).toMatchObject({
      number: 'GB-ABC00042A314',
      country: 'GB',
      maker: 'ABC',
      doubts: [],
    });
  });

  it('doubts fourteen characters without the hyphen', () => {
    expect(decodeHullNumber('GBABC00042A314')).toMatchObject({
      country: 'GB',
      doubts: [expect.stringContaining('no hyphen')],
    });
  });

  it.each(['GB-ABC00042A31', 'GB-ABC00042A3145', 'GBABC00042A31', 'GBABC00042Z314'])(
    'refuses %s for its length',
    (text) => {
      expect(decodeHullNumber(text)).toMatchObject({ kind: 'not_one', why: expect.stringMatching(/^Length/) });
    },
  );
});

describe('between the parts', () => {
  it.each(['ABC 12345 A788', 'ABC-12345-A788', 'ABC/12345/A788'])(
    'a number without country has nothing: %s',
    (text) => {
      expect(decodeHullNumber(text)).toMatchObject({ why: expect.stringContaining('without slash, hyphen or space') });
    },
  );

  it('any twelve digits are a date in straight-year form or none', () => {
    fc.assert(
      fc.property(digits(12), (text) => {
        const m = Number(text.slice(8, 10));
        expect(decodeHullNumber(text).kind).toBe(m >= 1 && m <= 12 ? 'decoded' : 'not_one');
      }),
    );
  });
});
