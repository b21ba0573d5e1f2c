/**
 * The 23-character id of a second-generation 406 MHz beacon.
 *
 * One published example shows how it begins (1, the country's ten bits, 101). The parts after that, Cospas-Sarsat
 * C/S T.018, are second-hand: from a public decoder (github.com/davidmoten/sgb-decoder) with its test of that
 * example. Bits are numbered from 1 within the id.
 */
import { type Bits, readBaudot } from './beacon-bits.ts';

export type SecondGeneration = {
  readonly generation: 'second';
  /** Type approval certificate number. */
  readonly typeApproval: number;
  readonly serial: number;
  readonly test: boolean;
  readonly mmsi: string | null;
  readonly callSign: string | null;
  readonly doubts: readonly string[];
};

const MMSI = '001';
const CALL_SIGN = '010';
/** What stands there when the beacon was coded without. */
const NO_MMSI = 111_111;

export function readSecondGeneration(bits: Bits): SecondGeneration {
  const begins = bits.text(1, 1) === '1' && bits.text(12, 14) === '101';
  const vessel = bits.text(46, 48);
  const mmsi = bits.number(49, 78);
  const hasMmsi = vessel === MMSI && mmsi !== NO_MMSI;
  const doubts = begins ? [] : ['It does not begin as the one published example of a second-generation id does.'];
  return {
    generation: 'second',
    typeApproval: bits.number(15, 30),
    serial: bits.number(31, 44),
    test: bits.text(45, 45) === '1',
    mmsi: hasMmsi ? String(mmsi).padStart(9, '0') : null,
    callSign: vessel === CALL_SIGN ? readBaudot(bits.text(51, 92)).trim() || null : null,
    doubts,
  };
}
