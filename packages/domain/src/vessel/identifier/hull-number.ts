/**
 * Hull identification number (HIN), also as craft identification number (CIN) with the maker's country before it.
 *
 * 33 CFR 181.25, read: twelve characters without slash, hyphen or space; three of the maker, five of the serial number
 * (letters and digits but I, O and Q), four of the date (`hull-number-date.ts`). ISO 10087 puts two letters of the
 * country and a hyphen before them: structure second-hand, the clause not read; hyphens between the parts occur in
 * print. Neither has a check digit, and we hold no table of makers or of country letters.
 */
import { type Decoded, type NotOne, notOne } from './decoded.ts';
import { type HullDate, readHullDate } from './hull-number-date.ts';

export type HullNumber = Decoded<
  Omit<HullDate, 'doubts'> & {
    /** As it is written on a hull: the twelve characters, with country and hyphen where it has them. */
    readonly number: string;
    /** Two letters as written. */
    readonly country: string | null;
    readonly maker: string;
    readonly serial: string;
  }
>;

export function decodeHullNumber(text: string): HullNumber | NotOne {
  const written = text.trim().toUpperCase();
  const prefixed = /^([A-Z]{2})-(.+)$/.exec(written);
  if (prefixed?.[1] && prefixed[2]) return decodeTwelve(prefixed[2].replaceAll('-', ''), prefixed[1]);
  const joined = /^([A-Z]{2})([A-Z\d]{12})$/.exec(written);
  const read = joined?.[1] && joined[2] ? decodeTwelve(joined[2], joined[1]) : null;
  if (read?.kind !== 'decoded') return decodeTwelve(written, null);
  return { ...read, doubts: ['There is no hyphen after the letters of the country.', ...read.doubts] };
}

function decodeTwelve(twelve: string, country: string | null): HullNumber | NotOne {
  if (twelve.length !== 12) return notOne(wrongLength(twelve.length, country));
  const [maker, serial, four] = [twelve.slice(0, 3), twelve.slice(3, 8), twelve.slice(8)];
  if (!/^[A-Z\d]{3}$/.test(maker)) {
    return notOne(`Manufacturer code: ${maker} is not three letters or digits (33 CFR 181.25(a)).`);
  }
  if (!/^[A-HJ-NPR-Z\d]{5}$/.test(serial)) {
    return notOne(`Serial characters: ${serial} is not five letters or digits without I, O and Q (33 CFR 181.25(b)).`);
  }
  const date = readHullDate(four);
  if (!date) {
    return notOne(
      `Date characters: ${four} is none of a letter A to L and three digits, month and year in four digits, or M, two digits and a letter A to L.`,
    );
  }
  const number = country ? `${country}-${twelve}` : twelve;
  return { kind: 'decoded', number, country, maker, serial, ...date, doubts: [...makerDoubts(maker), ...date.doubts] };
}

function wrongLength(length: number, country: string | null): string {
  const due = country
    ? 'twelve characters after the country and its hyphen'
    : 'twelve characters without slash, hyphen or space (33 CFR 181.25)';
  const before = 'Before 1 November 1972 there was no standard form: an older number is kept as it is.';
  return `Length: ${length}, and it has ${due}. ${before}`;
}

function makerDoubts(maker: string): string[] {
  return /\d/.test(maker) ? [`The manufacturer code ${maker} has a digit; in the examples we know it is letters.`] : [];
}
