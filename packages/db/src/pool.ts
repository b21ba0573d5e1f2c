/** The door to PostgreSQL. Dates stay text: pg's own parsing would make them moments in the server's zone. */
import { Kysely, PostgresDialect } from 'kysely';
import pg from 'pg';
import { namingClient } from './named-statements.ts';
import type { Database } from './schema.ts';

const DATE = 1082;
const BIGINT = 20;
const types = {
  getTypeParser: (oid: number, format?: 'text' | 'binary') => {
    if (oid === DATE) return (text: string) => text;
    if (oid === BIGINT) return Number;
    return pg.types.getTypeParser(oid, format);
  },
} as pg.CustomTypesConfig;

export type Db = Kysely<Database>;
export type Pools = {
  readonly app: Db;
  readonly owner: Db;
  /** For the library that keeps people's accounts: it sees its own schema and nothing else. */
  readonly accounts: pg.Pool;
  /** Of the application: how many connections there are, how many do nothing, and how many requests wait for one. */
  connections(): { readonly total: number; readonly idle: number; readonly waiting: number };
  close(): Promise<void>;
};
export type PoolOptions = {
  readonly url: string;
  readonly size?: number;
  readonly patienceMs?: number;
  onError?(error: Error): void;
};

/** The application's role, and one generic plan a statement: with tenants of every size a custom plan is re-made for ever. */
const AS_APPLICATION = '-c role=garboard_app -c plan_cache_mode=force_generic_plan -c jit=off';

const AS_ACCOUNTS = '-c role=garboard_accounts -c search_path=auth';

/**
 * Pools on one address: `app` under row-level security for everything, `owner` for migrations and administration.
 * Nothing in `app` waits longer than `patienceMs`, for a connection or for a statement: see `tookTooLong`.
 */
export function openPools({ url, size = 4, patienceMs = 30_000, onError = () => {} }: PoolOptions): Pools {
  const app = new pg.Pool({
    connectionString: url,
    max: size,
    types,
    options: `${AS_APPLICATION} -c statement_timeout=${patienceMs}`,
    connectionTimeoutMillis: patienceMs,
    Client: namingClient(),
  });
  const owner = new pg.Pool({ connectionString: url, max: 2, types });
  const accounts = new pg.Pool({ connectionString: url, max: size, options: AS_ACCOUNTS });
  let closing = false;
  // A connection on its way out may still hear that the server is stopping: that is no fault.
  for (const pool of [app, owner, accounts]) hearOfLoss(pool, (error) => closing || onError(error));
  const pools = { app: kysely(app), owner: kysely(owner), accounts };
  const close = async () => {
    closing = true;
    await Promise.all([pools.app.destroy(), pools.owner.destroy(), accounts.end()]);
  };
  const connections = () => ({ total: app.totalCount, idle: app.idleCount, waiting: app.waitingCount });
  return { ...pools, close, connections };
}

/**
 * A connection can be lost while a request holds it and asks nothing, between two statements of a transaction. The
 * pool hears of idle ones only; an error that nobody hears of would end the process.
 */
function hearOfLoss(pool: pg.Pool, onLoss: (error: Error) => void): void {
  pool.on('connect', (client) => client.on('error', onLoss));
  pool.on('error', () => {});
}

function kysely(pool: pg.Pool): Db {
  return new Kysely<Database>({ dialect: new PostgresDialect({ pool }) });
}
