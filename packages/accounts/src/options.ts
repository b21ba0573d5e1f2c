/** The library as we use it: who somebody is, and nothing of any organisation. */
import { passkey } from '@better-auth/passkey';
import { APIError } from 'better-auth/api';
import { twoFactor } from 'better-auth/plugins/two-factor';
import type { BetterAuthOptions } from 'better-auth/types';
import type pg from 'pg';
import type { AttemptLimit } from './attempts.ts';
import { alreadySignedUpLetter, newPasswordLetter, verifyAddressLetter } from './letters.ts';
import type { SendMail } from './mail.ts';
import { openSession } from './open-session.ts';
import { LONGEST_PASSWORD, SHORTEST_PASSWORD } from './password.ts';
import { ACCOUNTS_PATH } from './paths.ts';
import { rulesAfter, rulesBefore } from './rules.ts';

/** NIST SP 800-63B-4 section 2.1.3, from memory: signing in anew at least every 30 days. */
const SESSION_DAYS = 30;
const DAY_S = 86_400;
const HOUR_S = 3_600;

export const SESSION_COOKIE = 'garboard_session';
/** Set by whoever calls `handle`, over whatever the client sent. */
export const ADDRESS_HEADER = 'x-garboard-address';

export type Limits = {
  /** From one address, at each door (signing in, up, a second factor, a new password), in ten seconds. */
  readonly tries: number;
  /** From one address, in a minute. */
  readonly letters: number;
  readonly attemptsAtAccount: AttemptLimit;
};

export type AccountsSettings = {
  /** Runs as `garboard_accounts` in the schema `auth`. */
  readonly pool: pg.Pool;
  readonly secret: string;
  /** Where people reach the program, such as `https://fleet.example.org`. Links in letters begin with it. */
  publicUrl(): string;
  /** The name that passkeys are bound to. */
  readonly passkeyHost: string;
  readonly secureCookies: boolean;
  readonly sendMail: SendMail | null;
  readonly limits: Limits;
};

/** House convention, no source; NIST SP 800-63B-4 section 3.2.2, from memory, asks for at most 100 failures in a row. */
export const USUAL_LIMITS: Limits = {
  tries: 5,
  letters: 3,
  attemptsAtAccount: { max: 10, windowMs: 15 * 60_000 },
};

function doors({ tries, letters }: Limits) {
  const tried = ['/sign-in/email', '/sign-up/email', '/reset-password', '/change-password', '/set-password'];
  const rules = [
    ...[...tried, '/two-factor/*', '/passkey/*'].map((path) => [path, { window: 10, max: tries }]),
    ...['/request-password-reset', '/send-verification-email'].map((path) => [path, { window: 60, max: letters }]),
  ];
  return Object.fromEntries(rules) as Record<string, { window: number; max: number }>;
}

/** `deliver` takes a letter without making the answer wait for it: its length would tell which addresses exist. */
export function optionsOf(settings: AccountsSettings, deliver: SendMail, onFault: (fault: unknown) => void) {
  const { pool, secret, publicUrl, passkeyHost, secureCookies, limits } = settings;
  return {
    appName: 'Garboard',
    database: pool,
    secret,
    basePath: ACCOUNTS_PATH,
    baseURL: `${secureCookies ? 'https' : 'http'}://${passkeyHost}`,
    // The caller has refused other origins already; this tells the library the same.
    trustedOrigins: (request?: Request) => [request?.headers.get('origin') ?? ''].filter(Boolean),
    emailAndPassword: {
      enabled: true,
      requireEmailVerification: true,
      minPasswordLength: SHORTEST_PASSWORD,
      maxPasswordLength: LONGEST_PASSWORD,
      resetPasswordTokenExpiresIn: HOUR_S,
      revokeSessionsOnPasswordReset: true,
      sendResetPassword: ({ user, token }) => deliver(newPasswordLetter(user, `${publicUrl()}/new-password/${token}`)),
      onExistingUserSignUp: ({ user }) => deliver(alreadySignedUpLetter(user, `${publicUrl()}/sign-in`)),
    },
    emailVerification: {
      expiresIn: HOUR_S,
      autoSignInAfterVerification: true,
      sendVerificationEmail: ({ user, token }) => deliver(verifyAddressLetter(user, `${publicUrl()}/verify/${token}`)),
    },
    session: {
      expiresIn: SESSION_DAYS * DAY_S,
      disableSessionRefresh: true,
      additionalFields: { activeOrganisationId: { type: 'string', required: false, input: false } },
    },
    verification: { storeIdentifier: 'hashed' },
    rateLimit: {
      enabled: true,
      storage: 'database',
      window: 10,
      max: 100,
      customRules: doors(limits),
    },
    hooks: { before: rulesBefore(pool, limits.attemptsAtAccount), after: rulesAfter(pool) },
    plugins: [
      twoFactor({ issuer: 'Garboard', allowPasswordless: true }),
      passkey({ rpID: passkeyHost, rpName: 'Garboard' }),
      openSession(),
    ],
    advanced: {
      useSecureCookies: secureCookies,
      cookiePrefix: 'garboard',
      cookies: { session_token: { name: SESSION_COOKIE } },
      database: { generateId: 'uuid' },
      ipAddress: { ipAddressHeaders: [ADDRESS_HEADER] },
    },
    telemetry: { enabled: false },
    logger: { disabled: true },
    onAPIError: { onError: (error) => void (error instanceof APIError || onFault(error)) },
  } satisfies BetterAuthOptions;
}
