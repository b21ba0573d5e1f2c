import type { Problem } from '@garboard/contract/problem.ts';
import type { Vessel, VesselPage } from '@garboard/contract/vessel/vessel.ts';
import { signedIn } from '@garboard/tests/support/api.ts';
import { pools } from '@garboard/tests/support/database.ts';
import { mintOrganisation } from '@garboard/tests/support/organisation.ts';
import { describe, expect, it } from 'vitest';

const HER = {
  name: 'Avocet',
  type: 'ketch',
  builtYear: 1987,
  lengthOverallM: 11.4,
  identifiers: { officialNumber: '44-A', hin: 'GB-ABC00001A787' },
  value: { amount: '32000.5', currency: 'GBP' },
  schemes: ['solas', 'insurer'],
  timeZone: 'Europe/Oslo',
  homePort: 'Stavanger',
};

describe('POST /v1/vessels', () => {
  it('puts a vessel on the register and says where she is', async () => {
    const owner = await signedIn();

    const made = await owner.post<Vessel>('/v1/vessels', HER);
    const read = await owner.get<Vessel>(made.headers.get('location') ?? '');

    expect(made.status).toBe(201);
    expect(made.headers.get('etag')).toBe('"1"');
    expect(read.body).toEqual(made.body);
    expect(read.body).toMatchObject({ ...HER, value: { amount: '32000.50', currency: 'GBP' } });
  });

  it('keeps the organisation’s time zone where none is given', async () => {
    const owner = await signedIn('owner', await mintOrganisation(pools, 'Pacific/Auckland'));

    const { body } = await owner.post<Vessel>('/v1/vessels', { name: 'Kiwi' });

    expect(body.timeZone).toBe('Pacific/Auckland');
  });

  it('names every fault at once and writes nothing', async () => {
    const owner = await signedIn();

    const { status, body } = await owner.post<Problem>(
      '/v1/vessels',
      {
        name: ' ',
        builtYear: 1750,
        beamM: -2,
        value: { amount: '1e9', currency: 'pounds' },
        identifiers: { hin: 5 },
        schemes: ['solas', 'navy'],
        timeZone: '+02:00',
        version: 4,
      },
      { 'idempotency-key': 'caf\u00e9' },
    );

    expect(status).toBe(422);
    expect(body.errors?.map(({ pointer }) => pointer).sort()).toEqual([
      '#header/Idempotency-Key',
      '/beamM',
      '/builtYear',
      '/identifiers/hin',
      '/name',
      '/schemes/1',
      '/timeZone',
      '/value/amount',
      '/value/currency',
      '/version',
    ]);
    expect((await owner.get<VesselPage>('/v1/vessels')).body.items).toEqual([]);
  });

  it('refuses whoever does not keep the register', async () => {
    const yard = await signedIn('yard');

    expect((await yard.post('/v1/vessels', HER)).status).toBe(403);
    expect((await yard.get<VesselPage>('/v1/vessels')).body.items).toEqual([]);
  });
});
