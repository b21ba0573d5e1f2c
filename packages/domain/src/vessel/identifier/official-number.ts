/**
 * Official or registry number: what a national register wrote down. Each register has a form of its own, and we hold
 * no table of them, so it is kept as written. Common practice, no source.
 */
import { type Decoded, type NotOne, notOne } from './decoded.ts';

export type OfficialNumber = Decoded<{ readonly number: string }>;

const CONTROL_CHARACTER = /\p{Cc}/u;

export function decodeOfficialNumber(text: string): OfficialNumber | NotOne {
  const number = text.trim();
  if (number === '') return notOne('There is nothing written.');
  if (CONTROL_CHARACTER.test(number)) return notOne('It holds a character that cannot be printed.');
  const doubts = /\d/.test(number) ? [] : ['There is no digit in it: is it the number, or a name?'];
  return { kind: 'decoded', number, doubts };
}
