import { describe, expect, it } from 'vitest';
import { locationWithMmsi, maritimeUser, secondGeneration } from './beacon.test-support.ts';
import { crossCheck, type Particulars } from './cross-check.ts';
import { decodeIdentifiers, type IdentifierTexts } from './identifiers.ts';

/** An invented British yacht whose papers agree. */
const SOUND: IdentifierTexts = {
  hin: 'GB-ABC00042B313',
  imo: '9074729',
  mmsi: '232003556',
  callSign: 'MABC2',
  officialNumber: '912345',
  beaconIds: [locationWithMmsi(232, 3556), maritimeUser(232, '003556')],
};
const BUILT: Particulars = { builtYear: 2013, flagCountry: 'united kingdom' };

function check(change: IdentifierTexts, particulars: Particulars = BUILT): readonly string[] {
  return crossCheck(decodeIdentifiers({ ...SOUND, ...change }), particulars);
}

it('papers that agree leave no doubt', () => {
  expect(check({})).toEqual([]);
  expect(crossCheck(decodeIdentifiers({}), {})).toEqual([]);
});

describe('each by itself', () => {
  it('an IMO number with a wrong check digit cannot be one, and it says why', () => {
    expect(check({ imo: '9074720' })).toEqual([
      'IMO number 9074720 cannot be one. Check digit: the first six digits ask for 9 at the end, not 0.',
    ]);
  });

  it('carries the doubts of its own decoding', () => {
    expect(check({ hin: 'GB-ABC00042-A3-99' }, {})).toEqual([
      expect.stringMatching(/^HIN GB-ABC00042-A3-99: The year digit 3/),
    ]);
  });
});

describe('the year of build', () => {
  const hin = 'ABC12345K485';
  it.each([1984, 1985])('%i agrees with a hull of 1984 and model year 1985', (builtYear) => {
    expect(check({ hin }, { builtYear })).toEqual([]);
  });

  it.each([1983, 1986])('%i does not', (builtYear) => {
    expect(check({ hin }, { builtYear })).toEqual([
      `The HIN ABC12345K485 says 1984 and model year 1985; the vessel is on record as built in ${builtYear}.`,
    ]);
  });

  it('is held against the year of manufacture where there is no model year', () => {
    expect(check({ hin: 'ABC123450679' }, { builtYear: 1980 })).toEqual([
      'The HIN ABC123450679 says 1979; the vessel is on record as built in 1980.',
    ]);
  });
});

describe('the MMSI', () => {
  it('of another kind of station is doubted', () => {
    expect(check({ mmsi: '823212345', beaconIds: [] })).toEqual([
      'The MMSI 823212345 is that of a handheld VHF with DSC and GNSS, not of a ship station.',
    ]);
  });

  it('of another flag is doubted; a name that we do not know is not compared', () => {
    expect(check({}, { flagCountry: 'France' })).toEqual([
      'The MMSI 232003556 has the digits of 232 (United Kingdom); the flag on record is France.',
    ]);
    expect(check({}, { flagCountry: 'Ruritania' })).toEqual([]);
  });

  it('of a territory agrees with the flag and the call signs of its state', () => {
    const bermuda = { mmsi: '310003556', beaconIds: [locationWithMmsi(310, 3556)] };
    expect(check(bermuda)).toEqual([]);
    expect(check({ ...bermuda, callSign: 'FABC' }, {})).toHaveLength(1);
  });
});

describe('the call sign', () => {
  it('of another state is doubted', () => {
    expect(check({ callSign: 'WDA2000' })).toEqual([
      'The call sign WDA2000 is of a series of United States of America; the MMSI has the digits of 232 (United Kingdom).',
    ]);
  });

  it('is not compared where the country has no series of its own', () => {
    expect(check({ mmsi: '252003556', callSign: 'HBAB', beaconIds: [] }, {})).toEqual([]);
  });
});

describe('a beacon', () => {
  it('coded with another MMSI is doubted', () => {
    const hex = locationWithMmsi(232, 999_999);
    expect(check({ beaconIds: [hex] })).toEqual([
      `The beacon ${hex} is coded with the MMSI 232999999, the vessel has 232003556.`,
    ]);
  });

  it('coded with the other of two countries’ digits is doubted, and the difference is named', () => {
    const hex = locationWithMmsi(233, 3556);
    expect(check({ beaconIds: [hex] })).toEqual([
      `The beacon ${hex} is coded with the MMSI 233003556, the vessel has 232003556. The last six digits agree, the country does not.`,
    ]);
  });

  it('without MMSI is held against the country of the vessel’s', () => {
    expect(check({ beaconIds: [secondGeneration(233, '')] })).toEqual([]);
    expect(check({ beaconIds: [secondGeneration(227, '')] })).toEqual([
      `The beacon ${secondGeneration(227, '')} is coded with the country 227 (France), the MMSI with 232 (United Kingdom).`,
    ]);
  });

  it('of a country that we do not know, the same as the vessel’s, agrees with it', () => {
    const said = check({ mmsi: '799003556', callSign: undefined, beaconIds: [secondGeneration(799, '')] }, {});
    expect(said).toEqual([expect.stringMatching(/^MMSI 799003556: /), expect.stringMatching(/^Beacon id /)]);
  });

  it('coded with another call sign is doubted', () => {
    expect(check({ beaconIds: ['9C6A4936E33B8D1'], mmsi: '227003556', callSign: 'FABD' }, {})).toEqual([
      'The beacon 9C6A4936E33B8D1 is coded with the call sign FABC, the vessel has FABD.',
    ]);
    expect(check({ beaconIds: ['9C6A4936E33B8D1'], mmsi: '227003556', callSign: 'FABC' }, {})).toEqual([]);
  });

  it('is not compared with what is missing or cannot be', () => {
    expect(check({ mmsi: undefined, callSign: undefined })).toEqual([]);
    expect(check({ mmsi: '1' })).toEqual([expect.stringMatching(/^MMSI 1 cannot be one\./)]);
  });
});
