/** The run's database for one test file: pools that are closed when its tests are done. */
import { openPools } from '@garboard/db/pool.ts';
import { afterAll, inject, onTestFinished } from 'vitest';
import { createEmptyDatabase, type TestDatabase } from '../harness/test-database.ts';

declare module 'vitest' {
  interface ProvidedContext {
    /** Of the run's migrated database. */
    databaseUrl: string;
    /** Of a database on the same server from which others can be made. */
    serverUrl: string;
  }
}

export const databaseUrl: string = inject('databaseUrl');

export const pools = openPools({ url: databaseUrl, size: 4 });
afterAll(() => pools.close());

/** A database of the calling test's own, without tables; dropped when the test is done. */
export async function freshDatabase(): Promise<TestDatabase> {
  const database = await createEmptyDatabase(inject('serverUrl'));
  onTestFinished(() => database.drop());
  return database;
}
