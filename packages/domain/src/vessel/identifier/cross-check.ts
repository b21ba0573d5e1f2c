/**
 * What is doubtful about the identifiers of one vessel, each by itself and one against another. Sentences for a
 * screen; nothing here refuses anything.
 *
 * That a beacon's country and digits are those of the vessel's MMSI: Cospas-Sarsat beacon coding guide, read. That the
 * rest should agree is plain sense, no source.
 */
import type { BeaconId } from './beacon-id.ts';
import { stateHasSeries } from './call-sign.ts';
import { type Country, countryInWords, sameFlag } from './country.ts';
import type { HullNumber } from './hull-number.ts';
import { decodedOf, type Identifiers, type Reading } from './identifiers.ts';
import { stationInWords } from './mmsi.ts';

/** `flagCountry` is the name of a country; one that our table does not have is not compared. */
export type Particulars = { readonly builtYear?: number | undefined; readonly flagCountry?: string | undefined };

export function crossCheck(identifiers: Identifiers, particulars: Particulars): readonly string[] {
  const hin = decodedOf(identifiers.hin);
  return [
    ...own('HIN', identifiers.hin),
    ...own('IMO number', identifiers.imo),
    ...own('MMSI', identifiers.mmsi),
    ...own('Call sign', identifiers.callSign),
    ...own('Official number', identifiers.officialNumber),
    ...identifiers.beaconIds.flatMap((beacon) => own('Beacon id', beacon)),
    ...(hin ? yearDoubts(hin, particulars.builtYear) : []),
    ...mmsiDoubts(identifiers, particulars.flagCountry),
    ...callSignDoubts(identifiers),
    ...identifiers.beaconIds.flatMap((beacon) => beaconDoubts(beacon, identifiers)),
  ];
}

type Doubtful = { readonly kind: 'decoded'; readonly doubts: readonly string[] };

function own(name: string, of: Reading<Doubtful> | null): string[] {
  if (!of) return [];
  if (of.read.kind === 'not_one') return [`${name} ${of.text.trim()} cannot be one. ${of.read.why}`];
  return of.read.doubts.map((doubt) => `${name} ${of.text.trim()}: ${doubt}`);
}

function yearDoubts({ number, built, modelYear }: HullNumber, builtYear: number | undefined): string[] {
  if (builtYear === undefined) return [];
  const years = [built.year, modelYear ?? built.year];
  if (Math.min(...years) <= builtYear && builtYear <= Math.max(...years)) return [];
  const model = modelYear === null ? '' : ` and model year ${modelYear}`;
  return [`The HIN ${number} says ${built.year}${model}; the vessel is on record as built in ${builtYear}.`];
}

function mmsiDoubts(identifiers: Identifiers, flagCountry: string | undefined): string[] {
  const mmsi = decodedOf(identifiers.mmsi);
  if (!mmsi) return [];
  const { country, digits, station } = mmsi;
  const otherStation =
    station === 'ship_station'
      ? []
      : [`The MMSI ${digits} is that of ${stationInWords(station)}, not of a ship station.`];
  const otherFlag = flagCountry !== undefined && country?.name && sameFlag(country.name, flagCountry) === false;
  const flag = otherFlag
    ? [`The MMSI ${digits} has the digits of ${countryInWords(country)}; the flag on record is ${flagCountry}.`]
    : [];
  return [...otherStation, ...flag];
}

/** Territories without a series of their own use their state's; where neither has one, nothing is compared. */
function callSignDoubts(identifiers: Identifiers): string[] {
  const [call, mmsi] = [decodedOf(identifiers.callSign), decodedOf(identifiers.mmsi)];
  const country = mmsi?.country;
  if (!call?.state || !country?.name || !hasSeries(country) || sameFlag(call.state, country.name) !== false) return [];
  return [
    `The call sign ${call.sign} is of a series of ${call.state}; the MMSI has the digits of ${countryInWords(country)}.`,
  ];
}

function hasSeries({ name, partOf }: Country): boolean {
  return [name, partOf].some((state) => state !== null && stateHasSeries(state));
}

function beaconDoubts(reading: Reading<BeaconId>, identifiers: Identifiers): string[] {
  const beacon = decodedOf(reading);
  if (!beacon) return [];
  const [mmsi, call] = [decodedOf(identifiers.mmsi), decodedOf(identifiers.callSign)];
  const otherCall =
    call && beacon.callSign !== null && beacon.callSign !== call.sign
      ? [`The beacon ${beacon.hex} is coded with the call sign ${beacon.callSign}, the vessel has ${call.sign}.`]
      : [];
  return [...(mmsi ? beaconAgainstMmsi(beacon, mmsi.digits, mmsi.country) : []), ...otherCall];
}

function beaconAgainstMmsi(beacon: BeaconId, digits: string, country: Country | null): string[] {
  if (beacon.mmsi === digits) return [];
  if (beacon.mmsi !== null) {
    const sameEnd = beacon.mmsi.slice(3) === digits.slice(3) ? ' The last six digits agree, the country does not.' : '';
    return [`The beacon ${beacon.hex} is coded with the MMSI ${beacon.mmsi}, the vessel has ${digits}.${sameEnd}`];
  }
  if (!country || country.mid === beacon.country.mid) return [];
  if (country.name && beacon.country.name && sameFlag(country.name, beacon.country.name)) return [];
  return [
    `The beacon ${beacon.hex} is coded with the country ${countryInWords(beacon.country)}, the MMSI with ${countryInWords(country)}.`,
  ];
}
