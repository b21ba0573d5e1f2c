/** The identifiers of a vessel in plain words for a screen. What is doubtful about them is for `crossCheck` to say. */

import { dayOf } from '../../calendar/day.ts';
import { monthInWords } from '../../calendar/words.ts';
import type { BeaconId } from './beacon-id.ts';
import type { CallSign } from './call-sign.ts';
import { countryInWords } from './country.ts';
import type { HullNumber } from './hull-number.ts';
import type { Identifiers, Reading } from './identifiers.ts';
import type { ImoNumber } from './imo-number.ts';
import { type Mmsi, stationInWords } from './mmsi.ts';
import type { OfficialNumber } from './official-number.ts';

/** One sentence for each identifier that is given, in the order of a vessel's papers. */
export function describeIdentifiers(identifiers: Identifiers): readonly string[] {
  return [
    ...describe('HIN', identifiers.hin, hullNumberInWords),
    ...describe('IMO number', identifiers.imo, imoNumberInWords),
    ...describe('MMSI', identifiers.mmsi, mmsiInWords),
    ...describe('Call sign', identifiers.callSign, callSignInWords),
    ...describe('Official number', identifiers.officialNumber, officialNumberInWords),
    ...identifiers.beaconIds.flatMap((beacon) => describe('Beacon id', beacon, beaconInWords)),
  ];
}

function describe<T extends { readonly kind: 'decoded' }>(
  name: string,
  of: Reading<T> | null,
  inWords: (decoded: T) => string,
): string[] {
  if (!of) return [];
  return [of.read.kind === 'not_one' ? `${name}: ${of.text.trim()} cannot be one.` : `${name}: ${inWords(of.read)}.`];
}

/** Of a hull without country or with US before it the regulation leaves open whether the month is of certification. */
function hullNumberInWords({ country, maker, serial, form, built, modelYear }: HullNumber): string {
  const american = form === 'current' && (country === null || country === 'US');
  const act = american ? 'certified or built' : 'dated';
  const month = monthInWords(dayOf(built.year, built.month, 1));
  const from = country === null ? '' : `, code of country ${country}`;
  const model = modelYear === null ? '' : `, model year ${modelYear}`;
  return `built by ${maker}${from}, as hull ${serial}, ${act} in ${month}${model}`;
}

function imoNumberInWords({ number }: ImoNumber): string {
  return `${number}, and its check digit agrees`;
}

function mmsiInWords({ digits, station, country }: Mmsi): string {
  return `${digits}, ${stationInWords(station)}${country ? `, ${countryInWords(country)}` : ''}`;
}

function callSignInWords({ sign, state }: CallSign): string {
  return `${sign}, of a series of ${state ?? 'a country not known to us'}`;
}

function officialNumberInWords({ number }: OfficialNumber): string {
  return `${number}, kept as written`;
}

function beaconInWords(beacon: BeaconId): string {
  const inside = beacon.mmsi ? `MMSI ${beacon.mmsi}` : beacon.callSign ? `call sign ${beacon.callSign}` : null;
  const identity = inside ?? 'no MMSI or call sign that we read';
  return `${beacon.hex}, ${codedAs(beacon)}, country ${countryInWords(beacon.country)}, ${identity}`;
}

function codedAs(beacon: BeaconId): string {
  switch (beacon.generation) {
    case 'first':
      return `coded as ${beacon.inWords ?? `a ${beacon.flag} protocol ${beacon.code} that we do not read`}`;
    case 'second':
      return `second generation, type approval ${beacon.typeApproval}, serial number ${beacon.serial}${beacon.test ? ', coded as a test' : ''}`;
  }
}
