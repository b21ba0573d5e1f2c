/** The environment, read in one place and nowhere else. */
import path from 'node:path';

export type Config = {
  readonly port: number;
  readonly host: string;
  /** Absent: the program starts its own PostgreSQL in `dataDir`. */
  readonly databaseUrl?: string;
  readonly dataDir: string;
  readonly logLevel: string;
  /** Demo fleets on the first start. By default only on the program's own PostgreSQL. */
  readonly demo: boolean;
};

/** Throws with words a person can act on. */
export function readConfig(env: NodeJS.ProcessEnv): Config {
  const port = Number(env.PORT ?? 8080);
  if (!Number.isInteger(port) || port < 0 || port > 65_535)
    throw new Error(`PORT must be a port number, not "${env.PORT}"`);
  const databaseUrl = env.DATABASE_URL || undefined;
  return {
    port,
    host: env.HOST ?? '127.0.0.1',
    ...(databaseUrl && { databaseUrl }),
    dataDir: path.resolve(env.DATA_DIR ?? '.data'),
    logLevel: env.LOG_LEVEL ?? 'warn',
    demo: env.DEMO ? env.DEMO === 'yes' : databaseUrl === undefined,
  };
}
