/** Which PostgreSQL the tests run on: the one that is named, else a container, else the embedded one. */
import { startContainer } from './container-server.ts';
import { startEmbedded } from './embedded-server.ts';

export type DatabaseServer = {
  /** Where it comes from, for the reader of the run. */
  readonly words: string;
  /** The address of a database from which others are made. Its user may create databases and roles. */
  readonly url: string;
  stop(): Promise<void>;
};

export async function startDatabaseServer(): Promise<DatabaseServer> {
  const given = process.env.TEST_DATABASE_URL;
  if (given) return { words: 'the server of TEST_DATABASE_URL', url: given, stop: async () => {} };
  return (await startContainer()) ?? (await startEmbedded());
}
