/** The environment, read in one place and nowhere else. */
import path from 'node:path';
import type { Contact, RateLimits } from '@garboard/api/deps.ts';
import { type FilesPlace, filesOf } from './config-files.ts';

export type Config = {
  readonly port: number;
  readonly host: string;
  /** Absent: the program starts its own PostgreSQL in `dataDir`. */
  readonly databaseUrl?: string;
  readonly dataDir: string;
  /** Where photographs and papers are kept; by default in `dataDir`. */
  readonly files: FilesPlace;
  readonly logLevel: string;
  /** Demo fleets on the first start. By default only on the program's own PostgreSQL. */
  readonly demo: boolean;
  /** Shown in the API's document. Absent: whoever runs this server. */
  readonly contact?: Contact;
  /** Where people reach the program, if that is not the address it listens on. Without a slash at the end. */
  readonly publicUrl?: string;
  /** Absent: cookies are signed with a secret kept in the database. */
  readonly authSecret?: string;
  /** Requests a minute; absent: nobody is told to wait. */
  readonly rateLimits?: RateLimits;
  /** With this token /metrics can be read. */
  readonly metricsToken?: string;
  /** Hosts whose pages may call the API from a browser. */
  readonly corsOrigins: readonly string[];
  /** Absent: no letters are sent. */
  readonly mail?: { readonly url: string; readonly from: string };
};

const LOG_LEVELS: readonly string[] = ['fatal', 'error', 'warn', 'info', 'debug', 'trace', 'silent'];

/** Throws with words a person can act on. */
export function readConfig(env: NodeJS.ProcessEnv): Config {
  const port = Number(env.PORT ?? 8080);
  if (!Number.isInteger(port) || port < 0 || port > 65_535)
    throw new Error(`PORT must be a port number, not "${env.PORT}"`);
  const databaseUrl = env.DATABASE_URL || undefined;
  if (databaseUrl && !/^postgres(ql)?:\/\//.test(databaseUrl))
    throw new Error('DATABASE_URL must be an address such as postgres://user@host/database');
  const logLevel = env.LOG_LEVEL || 'warn';
  if (!LOG_LEVELS.includes(logLevel))
    throw new Error(`LOG_LEVEL must be one of ${LOG_LEVELS.join(', ')}, not "${logLevel}"`);
  if (env.DEMO && !['yes', 'no'].includes(env.DEMO)) throw new Error(`DEMO must be yes or no, not "${env.DEMO}"`);
  const dataDir = path.resolve(env.DATA_DIR ?? '.data');
  return {
    port,
    host: env.HOST || '127.0.0.1',
    ...(databaseUrl && { databaseUrl }),
    dataDir,
    files: filesOf(env, dataDir),
    logLevel,
    ...contactOf(env),
    demo: env.DEMO ? env.DEMO === 'yes' : databaseUrl === undefined,
    ...peopleOf(env),
    ...rateLimitsOf(env),
    corsOrigins: corsOriginsOf(env),
    ...metricsOf(env),
  };
}

/** Shorter secrets can be guessed. House convention, no source. */
const SHORTEST_SECRET = 32;

function peopleOf(env: NodeJS.ProcessEnv): Pick<Config, 'publicUrl' | 'authSecret' | 'mail'> {
  const publicUrl = env.PUBLIC_URL || undefined;
  if (publicUrl && !/^https?:\/\/[^/]+$/.test(publicUrl))
    throw new Error('PUBLIC_URL must be an address without a path, such as https://fleet.example.org');
  const authSecret = env.AUTH_SECRET || undefined;
  if (authSecret && authSecret.length < SHORTEST_SECRET)
    throw new Error(`AUTH_SECRET must have at least ${SHORTEST_SECRET} characters`);
  const url = env.MAIL_URL || undefined;
  if (url && !/^smtps?:\/\//.test(url))
    throw new Error('MAIL_URL must be an address such as smtp://mail.example.org:587');
  const from = env.MAIL_FROM || undefined;
  if ((url === undefined) !== (from === undefined)) throw new Error('MAIL_URL and MAIL_FROM are set together');
  return {
    ...(publicUrl && { publicUrl }),
    ...(authSecret && { authSecret }),
    ...(url && from && { mail: { url, from } }),
  };
}

/** A dashboard asks some ten things a page, a program a few hundred a sweep. House convention, no source. */
const EVERY_MINUTE: RateLimits = { credential: 1200, address: 2400 };

function rateLimitsOf(env: NodeJS.ProcessEnv): Pick<Config, 'rateLimits'> {
  const credential = wholeNumber(env, 'RATE_LIMIT_CREDENTIAL', EVERY_MINUTE.credential);
  const address = wholeNumber(env, 'RATE_LIMIT_ADDRESS', EVERY_MINUTE.address);
  if ((credential === 0) !== (address === 0))
    throw new Error('RATE_LIMIT_CREDENTIAL and RATE_LIMIT_ADDRESS are both 0, or neither');
  return credential === 0 ? {} : { rateLimits: { credential, address } };
}

function wholeNumber(env: NodeJS.ProcessEnv, name: string, otherwise: number): number {
  const number = Number(env[name] || otherwise);
  if (!Number.isSafeInteger(number) || number < 0)
    throw new Error(`${name} must be a whole number of requests a minute, or 0 for no limit, not "${env[name]}"`);
  return number;
}

function metricsOf({ METRICS_TOKEN: metricsToken }: NodeJS.ProcessEnv): Pick<Config, 'metricsToken'> {
  if (!metricsToken) return {};
  if (metricsToken.length < SHORTEST_SECRET)
    throw new Error(`METRICS_TOKEN must have at least ${SHORTEST_SECRET} characters`);
  return { metricsToken };
}

function corsOriginsOf(env: NodeJS.ProcessEnv): readonly string[] {
  const origins = (env.CORS_ORIGINS ?? '')
    .split(',')
    .map((each) => each.trim())
    .filter((each) => each !== '');
  const wrong = origins.find((each) => !/^https?:\/\/[^/*]+$/.test(each));
  if (wrong !== undefined)
    throw new Error(`CORS_ORIGINS must be addresses without a path, such as https://fleet.example.org, not "${wrong}"`);
  return origins;
}

/** All three or none: half a contact helps nobody. */
function contactOf({ CONTACT_NAME, CONTACT_URL, CONTACT_EMAIL }: NodeJS.ProcessEnv): Pick<Config, 'contact'> {
  if (!CONTACT_NAME && !CONTACT_URL && !CONTACT_EMAIL) return {};
  if (!CONTACT_NAME || !CONTACT_EMAIL?.includes('@') || !URL.canParse(CONTACT_URL ?? ''))
    throw new Error('CONTACT_NAME, CONTACT_URL and CONTACT_EMAIL go together: a name, an address and an e-mail');
  return { contact: { name: CONTACT_NAME, url: CONTACT_URL ?? '', email: CONTACT_EMAIL } };
}
