import { describe, expect, it } from 'vitest';
import { locationWithMmsi } from './beacon.test-support.ts';
import { describeIdentifiers } from './describe-identifiers.ts';
import { decodeIdentifiers } from './identifiers.ts';

const words = (...texts: Parameters<typeof decodeIdentifiers>) => describeIdentifiers(decodeIdentifiers(...texts));

describe('identifiers in words', () => {
  it('are a sentence each, in the order of a vessel’s papers', () => {
    expect(
      words({
        beaconIds: [locationWithMmsi(232, 3556), '9934039823D000000000000'],
        hin: 'XYZ12345C898',
        imo: 'IMO 9074729',
        mmsi: '232003556',
        callSign: 'mabc2',
        officialNumber: 'SSR 123456',
      }),
    ).toEqual([
      'HIN: built by XYZ, as hull 12345, certified or built in March 1998, model year 1998.',
      'IMO number: 9074729, and its check digit agrees.',
      'MMSI: 232003556, a ship station, 232 (United Kingdom).',
      'Call sign: MABC2, of a series of United Kingdom.',
      'Official number: SSR 123456, kept as written.',
      `Beacon id: ${locationWithMmsi(232, 3556)}, coded as an EPIRB with MMSI, country 232 (United Kingdom), MMSI 232003556.`,
      'Beacon id: 9934039823D000000000000, second generation, type approval 230, serial number 573, country 201 (Albania), no MMSI or call sign that we read.',
    ]);
  });

  it('of other hull forms say what their date is', () => {
    expect(words({ hin: 'GB-ABC00042A314' })).toEqual([
      'HIN: built by ABC, code of country GB, as hull 00042, dated in January 2013, model year 2014.',
    ]);
    expect(words({ hin: 'ABC123451272' })).toEqual(['HIN: built by ABC, as hull 12345, dated in December 1972.']);
    expect(words({ hin: 'US-ABC12345A788' })).toEqual([expect.stringContaining('certified or built in January 1987')]);
  });

  it('that cannot be one say so; what is not given is not mentioned', () => {
    expect(words({ imo: ' 9074720 ' })).toEqual(['IMO number: 9074720 cannot be one.']);
    expect(words({})).toEqual([]);
  });

  it('name what they do not know', () => {
    expect(words({ callSign: 'QABC', mmsi: '970012345' })).toEqual([
      'MMSI: 970012345, an AIS search-and-rescue transmitter.',
      'Call sign: QABC, of a series of a country not known to us.',
    ]);
    expect(words({ beaconIds: ['9C6A4936E33B8D1', '1D0600000FFBFFF'] })).toEqual([
      expect.stringContaining('call sign FABC'),
      expect.stringContaining('coded as a location protocol 0011 that we do not read'),
    ]);
  });
});
