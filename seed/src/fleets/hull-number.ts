/** Hull identification numbers for the demo fleets: well-formed, with an invented maker's code and serial number. */

const MAKER = 'QZX';
const MARCH = 'C';

/** In the current form, dated in March of a year whose model year is the same. */
export function hullNumber(serial: string, year: number): string {
  return `GB-${MAKER}${serial}${MARCH}${year % 10}${String(year % 100).padStart(2, '0')}`;
}
