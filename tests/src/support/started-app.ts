/** The API with the built dashboard on a free port, over the run's database: what the browser tests look at. */
import { createApp } from '@garboard/api/app.ts';
import type { LogEntry } from '@garboard/api/deps.ts';
import type { Role } from '@garboard/domain/organisation/permission.ts';
import type { BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, onTestFinished } from 'vitest';
import { DASHBOARD_DIST, dashboardBuild } from '../../../apps/host/src/build-dashboard.ts';
import { type Listening, listen } from '../../../apps/host/src/listen.ts';
import { pools } from './database.ts';
import { files } from './files.ts';
import { NOW, type TestOrganisation } from './organisation.ts';
import { accountsForTests, aPerson, linkOf, outbox } from './people.ts';

/** The browser writes this down for every answer that is no success, and for one that is lost; whether it was meant is the test's to say. */
const REFUSED_ON_PURPOSE =
  /^Failed to load resource: (the server responded with a status of 4\d\d|net::ERR_CONNECTION_RESET)/;

export type StartedApp = {
  readonly address: () => string;
  /** A page of somebody with that role in the organisation, on the test's own day. */
  signIn(context: BrowserContext, organisation: TestOrganisation, role?: Role): Promise<Page>;
};

export function useStartedApp(): StartedApp {
  const faults: LogEntry[] = [];
  let server: Listening;
  beforeAll(async () => {
    await (await dashboardBuild())?.();
    const log = (entry: LogEntry) => void (entry.event === 'fault' && faults.push(entry));
    const accounts = accountsForTests(() => server.address.replace('127.0.0.1', 'localhost'));
    const app = createApp({
      pools,
      files,
      now: () => NOW,
      log,
      accounts,
      outbox,
      dashboardDir: DASHBOARD_DIST,
      version: 'test',
    });
    server = await listen(app.fetch, 0, '127.0.0.1');
  });
  afterAll(async () => {
    await server.stop();
    expect(faults, 'faults of the API').toEqual([]);
  });
  const address = () => server.address;
  return {
    address,
    signIn: async (context, organisation, role = 'owner') => {
      const page = await watchedPage(context);
      const { id } = await aPerson(organisation, { role });
      await page.goto(`${address()}${await linkOf(organisation, id)}`);
      return page;
    },
  };
}

/** Nothing may go wrong unseen: no error thrown in the page, nothing refused by its policy. */
export async function watchedPage(context: BrowserContext): Promise<Page> {
  await context.clock.setFixedTime(NOW);
  const page = await context.newPage();
  const wrong: string[] = [];
  page.on('pageerror', (error) => wrong.push(error.message));
  page.on('console', (message) => {
    if (message.type() === 'error' && !REFUSED_ON_PURPOSE.test(message.text())) wrong.push(message.text());
  });
  onTestFinished(() => expect(wrong, 'errors in the page').toEqual([]));
  return page;
}
