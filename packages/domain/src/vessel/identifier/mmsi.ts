/**
 * Maritime mobile service identity: nine digits whose beginning says what kind of station it is.
 *
 * Recommendation ITU-R M.585-9: the form of ship stations (annex 1) read; the other beginnings second-hand, from a
 * public list of them.
 */
import { type Country, countryOfMid } from './country.ts';
import { type Decoded, type NotOne, notOne } from './decoded.ts';

export type StationKind =
  | 'ship_station'
  | 'group_of_ships'
  | 'coast_station'
  | 'sar_aircraft'
  | 'craft_of_parent'
  | 'aid_to_navigation'
  | 'handheld_vhf'
  | 'ais_sart'
  | 'man_overboard'
  | 'epirb_ais';

/** `country` is `null` where the form carries none: AIS-SART, man overboard, EPIRB-AIS. */
export type Mmsi = Decoded<{
  readonly digits: string;
  readonly station: StationKind;
  readonly country: Country | null;
}>;

/** Longest beginning first. Without `mid` the form says nothing of a country. */
const FORMS: readonly { readonly station: StationKind; readonly begins: RegExp; readonly mid?: number }[] = [
  { station: 'sar_aircraft', begins: /^111/, mid: 3 },
  { station: 'ais_sart', begins: /^970/ },
  { station: 'man_overboard', begins: /^972/ },
  { station: 'epirb_ais', begins: /^974/ },
  { station: 'coast_station', begins: /^00/, mid: 2 },
  { station: 'craft_of_parent', begins: /^98/, mid: 2 },
  { station: 'aid_to_navigation', begins: /^99/, mid: 2 },
  { station: 'group_of_ships', begins: /^0/, mid: 1 },
  { station: 'handheld_vhf', begins: /^8/, mid: 1 },
  { station: 'ship_station', begins: /^[2-7]/, mid: 0 },
];

export function decodeMmsi(text: string): Mmsi | NotOne {
  const digits = text.trim();
  if (!/^\d{9}$/.test(digits)) return notOne('An MMSI is nine digits, with nothing between them.');
  const form = FORMS.find(({ begins }) => begins.test(digits));
  if (!form) return notOne(`No kind of station has an MMSI that begins with ${digits.slice(0, 3)}.`);
  if (form.mid === undefined) return { kind: 'decoded', digits, station: form.station, country: null, doubts: [] };
  const mid = digits.slice(form.mid, form.mid + 3);
  const country = countryOfMid(Number(mid));
  if (!country) {
    return notOne(
      `As ${stationInWords(form.station)} it would have the country digits ${mid}; these run from 200 to 799.`,
    );
  }
  return { kind: 'decoded', digits, station: form.station, country, doubts: country.doubts };
}

const STATION_WORDS: Record<StationKind, string> = {
  ship_station: 'a ship station',
  group_of_ships: 'a group of ships',
  coast_station: 'a coast station',
  sar_aircraft: 'a search-and-rescue aircraft',
  craft_of_parent: 'a craft associated with a parent ship',
  aid_to_navigation: 'an aid to navigation',
  handheld_vhf: 'a handheld VHF with DSC and GNSS',
  ais_sart: 'an AIS search-and-rescue transmitter',
  man_overboard: 'a man-overboard device',
  epirb_ais: 'an EPIRB with AIS',
};

/** With its article: "a ship station". */
export function stationInWords(station: StationKind): string {
  return STATION_WORDS[station];
}
