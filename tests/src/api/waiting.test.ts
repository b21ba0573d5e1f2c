/** Nobody waits for ever: what takes longer than the database may take is given up, and says so. */
import { createApp } from '@garboard/api/app.ts';
import type { LogEntry } from '@garboard/api/deps.ts';
import type { Problem } from '@garboard/contract/problem.ts';
import { openPools } from '@garboard/db/pool.ts';
import { inOrganisation, wholeFleet } from '@garboard/db/scope.ts';
import { lockVessel } from '@garboard/db/vessel/vessels.ts';
import { afterAll, expect, it } from 'vitest';
import { type Client, signedIn, type Told } from '../support/api.ts';
import { databaseUrl, pools } from '../support/database.ts';
import { everythingOf } from '../support/everything-of.ts';
import { files } from '../support/files.ts';
import { NOW } from '../support/organisation.ts';
import { aVessel } from '../support/vessels.ts';

const impatient = openPools({ url: databaseUrl, size: 1, patienceMs: 200 });
afterAll(() => impatient.close());

const log: LogEntry[] = [];
const app = createApp({ pools: impatient, files, now: () => NOW, log: (entry) => log.push(entry), version: 'test' });

const theProblem = ({ status, body, headers }: Told<Problem>) => [status, body.type, headers.get('retry-after')];
const TIMED_OUT = [503, '/problems/timed-out', '5'];

it('gives up where somebody else holds the row, writes nothing, and works when it is free again', async () => {
  const owner = (await signedIn()).at(app.request);
  const { id: organisationId } = owner.organisation;
  const { id } = await aVessel(owner.organisation.ctx());
  const change = () => owner.patch<Problem>(`/v1/vessels/${id}`, { rig: 'ketch' }, { 'if-match': '"1"' });
  const before = await everythingOf(organisationId);

  const told = await inOrganisation(pools.app, wholeFleet(organisationId), async (tx) => {
    await lockVessel(tx, id);
    return change();
  });

  expect(theProblem(told)).toEqual(TIMED_OUT);
  expect(told.text).not.toContain('statement');
  expect(log.map(({ event }) => event)).toContain('fault');
  expect(await everythingOf(organisationId)).toEqual(before);
  expect((await change()).status).toBe(200);
});

it('gives up where every connection is taken', async () => {
  const owner: Client = (await signedIn()).at(app.request);

  const told = await impatient.app.connection().execute(() => owner.get<Problem>('/v1/vessels'));

  expect(theProblem(told)).toEqual(TIMED_OUT);
  expect((await owner.get('/v1/vessels')).status).toBe(200);
});
