/** The database: the one named, or the program's own. */
import { STATEMENT_SECONDS } from '@garboard/api/request/limits.ts';
import { migrate } from '@garboard/db/migrate.ts';
import { openPools, type Pools } from '@garboard/db/pool.ts';
import { startPostgres } from '@garboard/embedded/start-postgres.ts';
import type { Config } from './config.ts';

export type OpenDatabase = { readonly url: string; readonly pools: Pools; close(): Promise<void> };

/** Opens and migrates. When that fails, a server started here is stopped again. */
export async function openDatabase(config: Config, onError: (error: Error) => void): Promise<OpenDatabase> {
  const server = config.databaseUrl ? null : await startPostgres({ dataDir: config.dataDir });
  const url = config.databaseUrl ?? server?.url ?? '';
  const pools = openPools({ url, onError, patienceMs: STATEMENT_SECONDS * 1000 });
  const close = async () => {
    await pools.close();
    await server?.stop();
  };
  try {
    await migrate(pools.owner);
    return { url, pools, close };
  } catch (fault) {
    await close();
    throw fault;
  }
}
