/** A database of the run's own on the server, migrated once and dropped at the end, so that runs never meet. */
import { randomBytes } from 'node:crypto';
import { migrate } from '@garboard/db/migrate.ts';
import { openPools } from '@garboard/db/pool.ts';
import pg from 'pg';

export type TestDatabase = { readonly url: string; drop(): Promise<void> };

/** Empty: without tables. */
export async function createEmptyDatabase(serverUrl: string): Promise<TestDatabase> {
  const name = `garboard_test_${randomBytes(6).toString('hex')}`;
  await ask(serverUrl, `create database ${name}`);
  const url = new URL(serverUrl);
  url.pathname = `/${name}`;
  return {
    url: url.href,
    drop: async () => void (await ask(serverUrl, `drop database if exists ${name} with (force)`)),
  };
}

export async function createMigratedDatabase(serverUrl: string): Promise<TestDatabase> {
  const database = await createEmptyDatabase(serverUrl);
  const pools = openPools({ url: database.url });
  try {
    await migrate(pools.owner);
  } finally {
    await pools.close();
  }
  return database;
}

/** For example `18.4`. */
export async function serverVersion(serverUrl: string): Promise<string> {
  const [row] = await ask<{ server_version: string }>(serverUrl, 'show server_version');
  return row?.server_version ?? 'unknown';
}

/** One statement on a connection of its own; answers with its rows. */
export async function ask<Row extends pg.QueryResultRow>(url: string, statement: string): Promise<Row[]> {
  const client = new pg.Client({ connectionString: url });
  await client.connect();
  try {
    return (await client.query<Row>(statement)).rows;
  } finally {
    await client.end();
  }
}
