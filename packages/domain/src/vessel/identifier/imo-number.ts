/**
 * IMO ship identification number: seven digits, the last a check digit.
 *
 * Scheme: IMO Res. A.1117(30); the arithmetic as printed on public pages and recomputed (weights 7 to 2, the last
 * digit of the sum is the seventh). Status: second-hand. Recommendation ITU-R M.1371-5 (message 5) has valid numbers
 * begin at 1000000; second-hand, as quoted in several public programs. Small craft mostly hold none.
 *
 * The check is a filter, not proof: it misses an error of an even number in the third digit (weight 5), and an error
 * of five in the second, fourth or sixth (weights 6, 4, 2).
 */
import { type Decoded, type NotOne, notOne } from './decoded.ts';

export type ImoNumber = Decoded<{ readonly number: string; readonly weightedSum: number }>;

const WEIGHTS = [7, 6, 5, 4, 3, 2];

/** Reads `9074729` or `IMO 9074729`. */
export function decodeImoNumber(text: string): ImoNumber | NotOne {
  const number = /^(?:IMO ?)?(\d{7})$/i.exec(text.trim())?.[1];
  if (number === undefined) return notOne('An IMO number is seven digits, with or without IMO before them.');
  if (number.startsWith('0')) return notOne('IMO numbers begin at 1000000 (Rec. ITU-R M.1371-5).');
  const weightedSum = WEIGHTS.reduce((sum, weight, place) => sum + weight * Number(number[place]), 0);
  const due = weightedSum % 10;
  if (due !== Number(number[6])) {
    return notOne(`Check digit: the first six digits ask for ${due} at the end, not ${number[6]}.`);
  }
  return { kind: 'decoded', number, weightedSum, doubts: [] };
}
