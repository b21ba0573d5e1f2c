import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  hexOf,
  locationWithMmsi,
  maritimeUser,
  radioCallSign,
  returnLinkWithMmsi,
  secondGeneration,
} from './beacon.test-support.ts';
import { decodeBeaconId } from './beacon-id.ts';
import { MID_TABLE } from './maritime-identification-digits.ts';

const mid = fc.constantFrom(...MID_TABLE.flatMap(([, mids]) => mids));
const tail = fc.nat(999_999);
const six = (value: number) => String(value).padStart(6, '0');

describe('a 15-character id', () => {
  it('gives back the MMSI that was coded, by each protocol that has one', () => {
    fc.assert(
      fc.property(mid, tail, fc.nat(15), (country, end, beacon) => {
        const mmsi = `${country}${six(end)}`;
        const shared = { kind: 'decoded', country: { mid: country }, mmsi, callSign: null, carriesPosition: false };
        expect([
          decodeBeaconId(locationWithMmsi(country, end, beacon)),
          decodeBeaconId(maritimeUser(country, six(end))),
          decodeBeaconId(returnLinkWithMmsi(country, end)),
        ]).toMatchObject([
          { ...shared, protocol: 'location_with_mmsi', beacon: String(beacon) },
          { ...shared, protocol: 'maritime_user', beacon: '0', homing: '01' },
          { ...shared, protocol: 'return_link_with_mmsi' },
        ]);
      }),
    );
  });

  it('gives a call sign of seven characters, and one that is shorter', () => {
    const wda2 = ['111001', '110010', '111000', '011001'];
    const fabc = ['110110', '111000', '110011', '101110'];
    expect(decodeBeaconId(radioCallSign(366, wda2, [0, 0, 0]))).toMatchObject({ callSign: 'WDA2000', mmsi: null });
    expect(decodeBeaconId(radioCallSign(227, fabc, [2, 10, 10]))).toMatchObject({ callSign: 'FABC2', doubts: [] });
  });

  it('doubts characters that are in no code', () => {
    const read = decodeBeaconId(radioCallSign(227, ['000000', '111000', '110011', '101110'], [15, 10, 10]));
    expect(read).toMatchObject({ callSign: '?ABC?', doubts: [expect.stringContaining('in no code')] });
  });

  it('has no MMSI where the digits would be seven, and says so', () => {
    expect(decodeBeaconId(locationWithMmsi(232, 1_000_000))).toMatchObject({
      mmsi: null,
      doubts: [expect.stringContaining('1000000')],
    });
  });

  it('doubts an id that carries a position', () => {
    const read = decodeBeaconId(locationWithMmsi(232, 3556, 0, '000010100001000001010'));
    expect(read).toMatchObject({ carriesPosition: true, doubts: [expect.stringContaining('carries a position')] });
  });

  it.each([
    ['0110', 'an EPIRB with a serial number'],
    ['0011', null],
  ])('of location protocol %s is named without being read further', (code, inWords) => {
    const read = decodeBeaconId(hexOf(`00011101000${code}${'0'.repeat(23)}1011111111101111111111`));
    expect(read).toMatchObject({ protocol: 'other', code, inWords, mmsi: null, callSign: null, doubts: [] });
  });

  it.each([
    ['0111', 'a personal beacon with a serial number'],
    ['0110', 'an EPIRB with a serial number'],
  ])('tells a personal beacon from an EPIRB (%s)', (code, inWords) => {
    expect(decodeBeaconId(hexOf(`00011101000${code}${'01'.repeat(12)}011111111101111111111`))).toMatchObject({
      inWords,
    });
  });

  it.each([
    ['010', 'a float-free EPIRB with a serial number'],
    ['100', 'an EPIRB, not float-free, with a serial number'],
    ['110', 'a personal beacon with a serial number'],
    ['111', null],
  ])('of the serial user protocol says what kind of beacon it is (%s)', (type, inWords) => {
    expect(decodeBeaconId(hexOf(`10011101000011${type}${'01'.repeat(21)}1`))).toMatchObject({ inWords, flag: 'user' });
  });

  it('with return link and no MMSI has none', () => {
    const read = decodeBeaconId(hexOf(`00011101000110100${'01'.repeat(12)}0111111110111111111`));
    expect(read).toMatchObject({ protocol: 'other', inWords: 'a beacon with return link', mmsi: null, doubts: [] });
  });

  it('that begins as one of 23 characters does is doubted', () => {
    expect(decodeBeaconId('9934039823D0000')).toMatchObject({ doubts: [expect.stringContaining('23 characters')] });
  });

  it('whose identity is all ones or all noughts is doubted', () => {
    const ones = decodeBeaconId(hexOf(`0001110100001${'10'}${'1'.repeat(45)}`));
    const noughts = decodeBeaconId(hexOf(`0001110100001${'10'}${'0'.repeat(45)}`));
    expect([ones, noughts]).toMatchObject([
      { code: '0110', doubts: [expect.stringContaining('ever coded')] },
      { code: '0110', doubts: [expect.stringContaining('ever coded')] },
    ]);
  });

  it.each([0, 199, 800, 1023])('cannot have the country code %i', (code) => {
    expect(decodeBeaconId(locationWithMmsi(code, 1))).toMatchObject({ why: expect.stringContaining(`is ${code};`) });
  });

  it('doubts a country code in no table', () => {
    expect(decodeBeaconId(locationWithMmsi(799, 1))).toMatchObject({ doubts: [expect.stringContaining('799')] });
  });
});

describe('a 23-character id', () => {
  const mmsi = (value: number) => `001${value.toString(2).padStart(30, '0')}`;

  it('gives type approval and serial number of the published example, and no identity', () => {
    expect(decodeBeaconId('9934039823d000000000000')).toMatchObject({
      generation: 'second',
      country: { name: 'Albania' },
      typeApproval: 230,
      serial: 573,
      test: false,
      mmsi: null,
      callSign: null,
      doubts: [],
    });
  });

  it('gives back the MMSI that was coded', () => {
    fc.assert(
      fc.property(mid, tail, (country, end) => {
        const whole = country * 1_000_000 + end;
        expect(decodeBeaconId(secondGeneration(country, mmsi(whole)))).toMatchObject({
          typeApproval: 231,
          serial: 573,
          mmsi: String(whole),
        });
      }),
    );
  });

  it('has no MMSI where the bits that stand for none are', () => {
    expect(decodeBeaconId(secondGeneration(201, mmsi(111_111)))).toMatchObject({ mmsi: null });
  });

  it('gives back the call sign that was coded', () => {
    const fabc2 = '110110111000110011101110011001100100100100';
    expect(decodeBeaconId(secondGeneration(227, `01000${fabc2}`))).toMatchObject({ callSign: 'FABC2', mmsi: null });
  });

  it('that begins otherwise than the example is doubted', () => {
    expect(decodeBeaconId('1934039823D000000000000')).toMatchObject({ doubts: [expect.stringContaining('begin')] });
  });
});

it.each(['2024F72524FFBF', '2024F72524FFBFF0', '2024 F72524 FFBFF', '2024-F72524FFBFF', ''])('%j is no id', (text) => {
  expect(decodeBeaconId(text)).toMatchObject({ kind: 'not_one', why: expect.stringMatching(/^\S.+\.$/) });
});
