/**
 * Call sign of a ship station.
 *
 * ITU Radio Regulations: 19.45 (no accented letters) and 19.50 (first two characters) read; the forms of ship
 * stations (19.55 and 19.56) from memory, in line with the blocks of 47 CFR 2.302 (read). The state behind the first
 * characters is second-hand: see `call-sign-series.ts`.
 */
import { CALL_SIGN_SERIES } from './call-sign-series.ts';
import { type Decoded, type NotOne, notOne } from './decoded.ts';

/** `state` is `null` where no series of our table has it. */
export type CallSign = Decoded<{ readonly sign: string; readonly state: string | null }>;

const BEGINNING = /^(?:[A-Z]{2}|[A-Z]\d|\d[A-Z])/;
/** After the first two characters; a digit that follows a letter is neither 0 nor 1. */
const SHIP_FORMS = [/^..[A-Z]{2}$/, /^..[A-Z]{2}[2-9]$/, /^.[A-Z][2-9]\d{3}$/, /^..[A-Z][2-9]\d{3}$/];

export function decodeCallSign(text: string): CallSign | NotOne {
  const sign = text.trim().toUpperCase();
  if (!/^[A-Z\d]+$/.test(sign)) {
    return notOne(
      'A call sign is made of the letters A to Z and digits, with nothing between them (Radio Regulations 19.45).',
    );
  }
  if (!BEGINNING.test(sign)) {
    return notOne(
      'It begins with two letters, a letter and a digit, or a digit and a letter (Radio Regulations 19.50).',
    );
  }
  if (!SHIP_FORMS.some((form) => form.test(sign))) {
    return notOne(
      'It is in none of the forms of a ship station: two characters and two letters, with or without one digit of 2 to 9; or two characters, with or without a letter, and four digits, the one after a letter not 0 or 1 (Radio Regulations 19.55 and 19.56, from memory).',
    );
  }
  const state = stateOf(sign);
  const doubts = state ? [] : [`No series of call signs in our copy of the table begins with ${sign.slice(0, 3)}.`];
  return { kind: 'decoded', sign, state, doubts };
}

/** A digit in third place stands for every letter there: a series that is shared out by that letter says nothing. */
function stateOf(sign: string): string | null {
  const [first, last] = /^..\d/.test(sign) ? ['A', 'Z'] : [sign[2], sign[2]];
  const state = stateOfSeries(sign.slice(0, 2) + first);
  return state === stateOfSeries(sign.slice(0, 2) + last) ? state : null;
}

function stateOfSeries(three: string): string | null {
  const row = CALL_SIGN_SERIES.find(([, series]) =>
    series.split(' ').some((span) => span.slice(0, 3) <= three && three <= span.slice(4)),
  );
  return row?.[0] ?? null;
}

/** Whether any series of our table is of this state or territory itself. */
export function stateHasSeries(state: string): boolean {
  return CALL_SIGN_SERIES.some(([name]) => name === state);
}
