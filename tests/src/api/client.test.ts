/** The client that others are given, against the API over a real socket. */

import { serve } from '@garboard/api/serve.test-support.ts';
import { ApiProblem, isStatus } from '@garboard/client/api-problem.ts';
import { answer, everyPage, garboardClient } from '@garboard/client/client.ts';
import { afterAll, expect, it } from 'vitest';
import { app } from '../support/api.ts';
import { pools } from '../support/database.ts';
import { mintOrganisation } from '../support/organisation.ts';

const server = await serve(app);
afterAll(() => server.close());

async function aClient() {
  const { key } = await mintOrganisation(pools);
  return garboardClient({ address: server.address, apiKey: await key() });
}

it('asks for what the document has, and is answered in its types', async () => {
  const client = await aClient();
  const { id } = await answer(client.POST('/v1/vessels', { body: { name: 'Teal', schemes: ['solas'] } }));

  const vessel = await answer(client.GET('/v1/vessels/{vesselId}', { params: { path: { vesselId: id } } }));

  expect([vessel.name, vessel.version]).toEqual(['Teal', 1]);
});

it('reads a list to its end', async () => {
  const client = await aClient();
  for (const name of ['Teal', 'Sora', 'Knot']) await answer(client.POST('/v1/vessels', { body: { name } }));

  const vessels = await everyPage((cursor) =>
    answer(client.GET('/v1/vessels', { params: { query: { limit: 2, ...(cursor !== undefined && { cursor }) } } })),
  );

  expect(vessels.map(({ name }) => name)).toEqual(['Knot', 'Sora', 'Teal']);
});

it('throws the problem that it is answered with', async () => {
  const client = await aClient();

  const fault = await answer(client.POST('/v1/vessels', { body: { name: '' } })).catch((thrown: unknown) => thrown);

  expect(fault).toBeInstanceOf(ApiProblem);
  expect([isStatus(fault, 422), isStatus(fault, 404)]).toEqual([true, false]);
  expect((fault as ApiProblem).problem.errors).toEqual([{ pointer: '/name', detail: 'must not be empty' }]);
});

it('throws what never reached the API as it is', async () => {
  const client = garboardClient({ address: 'http://127.0.0.1:1' });

  await expect(answer(client.GET('/v1/vessels'))).rejects.not.toBeInstanceOf(ApiProblem);
});
