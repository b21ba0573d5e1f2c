import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { MID_TABLE, ONLY_IN_NEWER_TABLE } from './maritime-identification-digits.ts';
import { decodeMmsi, stationInWords } from './mmsi.ts';

const mids = MID_TABLE.flatMap(([, mids]) => mids);

describe('the table of maritime identification digits', () => {
  it('has 292, each once, all from 200 to 799', () => {
    expect(mids).toHaveLength(292);
    expect(new Set(mids).size).toBe(292);
    expect(mids.every((mid) => mid >= 200 && mid <= 799)).toBe(true);
  });

  it('names the state of a territory as it names the state itself', () => {
    const names = MID_TABLE.map(([name]) => name);
    expect(new Set(names).size).toBe(names.length);
    expect(MID_TABLE.flatMap(([, , partOf]) => partOf ?? []).filter((state) => !names.includes(state))).toEqual([]);
  });

  it('knows that ten of them stand in one table only', () => {
    expect([...ONLY_IN_NEWER_TABLE].filter((mid) => mids.includes(mid))).toHaveLength(10);
  });
});

describe('an MMSI', () => {
  it('gives the country of its digits, wherever the form puts them', () => {
    const forms = [
      ['', 'ship_station', 6],
      ['0', 'group_of_ships', 5],
      ['00', 'coast_station', 4],
      ['111', 'sar_aircraft', 3],
      ['98', 'craft_of_parent', 4],
      ['99', 'aid_to_navigation', 4],
      ['8', 'handheld_vhf', 5],
    ] as const;
    fc.assert(
      fc.property(
        fc.constantFrom(...forms),
        fc.constantFrom(...mids),
        fc.nat(999_999),
        ([before, station, rest], mid, end) => {
          const digits = `${before}${mid}${String(end).padStart(6, '0').slice(0, rest)}`;
          expect(decodeMmsi(digits)).toMatchObject({ kind: 'decoded', digits, station, country: { mid } });
        },
      ),
    );
  });

  it.each([
    ['970', 'ais_sart'],
    ['972', 'man_overboard'],
    ['974', 'epirb_ais'],
  ])('that begins with %s is of a device, without country', (begins, station) => {
    expect(decodeMmsi(`${begins}012345`)).toMatchObject({ station, country: null, doubts: [] });
  });

  it('doubts digits that no table has, and those of one table only', () => {
    expect(decodeMmsi('217123456')).toMatchObject({
      country: { name: null },
      doubts: [expect.stringContaining('217')],
    });
    expect(decodeMmsi('229123456')).toMatchObject({
      country: { name: 'Malta' },
      doubts: [expect.stringContaining('Only one of our two tables')],
    });
  });

  it.each(['971012345', '973012345', '112232123', '1', ' 23212345 6'])('cannot be %j', (text) => {
    expect(decodeMmsi(text)).toMatchObject({ kind: 'not_one', why: expect.stringMatching(/^\S.+\.$/) });
  });

  it('says as what its country digits cannot be', () => {
    expect(decodeMmsi('000000000')).toMatchObject({ why: expect.stringContaining(stationInWords('coast_station')) });
  });
});
