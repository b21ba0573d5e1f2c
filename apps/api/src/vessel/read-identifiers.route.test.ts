import type { Problem } from '@garboard/contract/problem.ts';
import type { ReadIdentifiers } from '@garboard/contract/vessel/identifier.ts';
import type { Vessel, VesselPage } from '@garboard/contract/vessel/vessel.ts';
import { signedIn } from '@garboard/tests/support/api.ts';
import { describe, expect, it } from 'vitest';

const PATH = '/v1/identifiers/read';

describe('POST /v1/identifiers/read', () => {
  it('says what each one says, in the order of a vessel’s papers', async () => {
    const viewer = await signedIn('viewer');

    const { status, body } = await viewer.post<ReadIdentifiers>(PATH, {
      beaconIds: ['9D09D65028154D1', '1D0401BC80FFBFF'],
      officialNumber: '44-A',
      callSign: 'MABC2',
      mmsi: '232123456',
      imo: 'IMO 9074729',
      hin: 'GB-QZX00042C898',
    });

    expect(status).toBe(200);
    expect(body.identifiers.map(({ identifier }) => identifier)).toEqual([
      'hin',
      'imo',
      'mmsi',
      'callSign',
      'officialNumber',
      'beaconId',
      'beaconId',
    ]);
    expect(body.identifiers[0]).toEqual({
      identifier: 'hin',
      text: 'GB-QZX00042C898',
      kind: 'decoded',
      number: 'GB-QZX00042C898',
      country: 'GB',
      maker: 'QZX',
      serial: '00042',
      form: 'current',
      built: { year: 1998, month: 3 },
      modelYear: 1998,
      doubts: [],
      inWords: 'HIN: built by QZX, code of country GB, as hull 00042, dated in March 1998, model year 1998.',
    });
    expect(body.identifiers[2]).toMatchObject({
      digits: '232123456',
      station: 'ship_station',
      country: { mid: 232, partOf: null },
    });
    expect(body.identifiers[5]).toMatchObject({
      generation: 'first',
      codedAs: 'an EPIRB by the maritime user protocol',
    });
  });

  it('shows doubt as doubt: each against the others, the year and the flag', async () => {
    const viewer = await signedIn('viewer');

    const { body } = await viewer.post<ReadIdentifiers>(PATH, {
      hin: 'GB-QZX00042C898',
      builtYear: 2001,
      mmsi: '232123456',
      flagCountry: 'Norway',
      beaconIds: ['1D0401BC80FFBFF'],
    });

    expect(body.identifiers.every(({ kind }) => kind === 'decoded')).toBe(true);
    expect(body.doubts).toEqual([
      expect.stringContaining('says 1998'),
      expect.stringContaining('the flag on record is Norway'),
      expect.stringContaining('is coded with the MMSI 232003556, the vessel has 232123456'),
    ]);
  });

  it('says why one cannot be one, and refuses nothing for it', async () => {
    const viewer = await signedIn('viewer');

    const { status, body } = await viewer.post<ReadIdentifiers>(PATH, {
      imo: '9074720',
    });

    expect(status).toBe(200);
    expect(body.identifiers).toEqual([
      {
        identifier: 'imo',
        text: '9074720',
        kind: 'not_one',
        why: expect.stringMatching(/^Check digit/),
        inWords: 'IMO number: 9074720 cannot be one.',
      },
    ]);
    expect(body.doubts).toEqual([expect.stringMatching(/^IMO number 9074720 cannot be one/)]);
  });

  it('has nothing to say of nothing', async () => {
    const viewer = await signedIn('viewer');

    expect((await viewer.post(PATH, {})).body).toEqual({
      identifiers: [],
      doubts: [],
    });
  });

  it('names every fault at once', async () => {
    const viewer = await signedIn('viewer');

    const { status, body } = await viewer.post<Problem>(PATH, {
      hin: 5,
      beaconIds: 'all',
      builtYear: 1750,
      flagCountry: 'x'.repeat(101),
      notes: [],
    });

    expect(status).toBe(422);
    expect(body.errors?.map(({ pointer }) => pointer).sort()).toEqual([
      '/beaconIds',
      '/builtYear',
      '/flagCountry',
      '/hin',
      '/notes',
    ]);
  });
});

describe('the notes beside a vessel’s identifiers', () => {
  const HER = {
    name: 'Avocet',
    builtYear: 2001,
    identifiers: { hin: 'GB-QZX00042C898', mmsi: '232123456' },
  };

  it('say what they say and what is doubtful, on her page and in the list', async () => {
    const owner = await signedIn();

    const made = await owner.post<Vessel>('/v1/vessels', HER);
    const one = await owner.get<Vessel>(`/v1/vessels/${made.body.id}`);
    const list = await owner.get<VesselPage>('/v1/vessels');

    const notes = {
      inWords: [expect.stringMatching(/^HIN: built by QZX/), expect.stringMatching(/^MMSI: 232123456, a ship station/)],
      doubts: ['The HIN GB-QZX00042C898 says 1998 and model year 1998; the vessel is on record as built in 2001.'],
    };
    expect([made, one].map(({ body }) => body.identifierNotes)).toEqual([notes, notes]);
    expect(list.body.items[0]?.identifierNotes).toEqual(notes);
  });

  it('are absent where no identifier is given', async () => {
    const owner = await signedIn();

    const { body } = await owner.post<Vessel>('/v1/vessels', { name: 'Teal' });

    expect(body).not.toHaveProperty('identifierNotes');
  });

  it('are not taken from anybody', async () => {
    const owner = await signedIn();
    const identifierNotes = { inWords: ['She is sound.'], doubts: [] };
    const { body } = await owner.post<Vessel>('/v1/vessels', HER);

    const [made, changed] = [
      await owner.post<Problem>('/v1/vessels', { ...HER, identifierNotes }),
      await owner.patch<Problem>(`/v1/vessels/${body.id}`, { identifierNotes }, { 'if-match': '"1"' }),
    ];

    expect(
      [made, changed].map(({ status, body: told }) => [status, told.errors?.map(({ pointer }) => pointer)]),
    ).toEqual([
      [422, ['/identifierNotes']],
      [422, ['/identifierNotes']],
    ]);
  });
});
