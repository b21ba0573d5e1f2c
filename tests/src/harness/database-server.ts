/** Which PostgreSQL the tests run on: the one that is named, else a container, else the embedded one. */
import { startContainer } from './container-server.ts';
import { startEmbedded } from './embedded-server.ts';
import type { RunningServer } from './running-server.ts';

export async function startDatabaseServer(): Promise<RunningServer> {
  const given = process.env.TEST_DATABASE_URL;
  if (given) return { words: 'the server of TEST_DATABASE_URL', url: given, stop: async () => {} };
  return (await startContainer()) ?? (await startEmbedded());
}
