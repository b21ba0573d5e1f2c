/** Our own rules around the library's doors: good passwords only, and not too many attempts at one account. */
import { APIError, createAuthMiddleware } from 'better-auth/api';
import type pg from 'pg';
import { type AttemptLimit, forgetAttempts, mayTry } from './attempts.ts';
import { type PasswordFault, passwordFault } from './password.ts';

const CODES: Record<PasswordFault, string> = {
  too_short: 'PASSWORD_TOO_SHORT',
  too_long: 'PASSWORD_TOO_LONG',
  common: 'PASSWORD_COMMON',
  says_who: 'PASSWORD_SAYS_WHO',
};
const SETS_PASSWORD: Partial<Record<string, 'password' | 'newPassword'>> = {
  '/sign-up/email': 'password',
  '/reset-password': 'newPassword',
  '/change-password': 'newPassword',
};

type Body = Readonly<Record<string, unknown>> | undefined;
const textOf = (body: Body, key: string): string => (typeof body?.[key] === 'string' ? body[key] : '');

/** Throws the library's kind of refusal. */
export function refuseBadPassword(password: string, about: readonly string[]): void {
  const fault = passwordFault(password, about);
  if (fault) throw new APIError('BAD_REQUEST', { code: CODES[fault], message: 'That password is not taken.' });
}

export function rulesBefore(pool: pg.Pool, limit: AttemptLimit) {
  return createAuthMiddleware(async (ctx) => {
    const body = ctx.body as Body;
    const key = SETS_PASSWORD[ctx.path];
    if (key) refuseBadPassword(textOf(body, key), [textOf(body, 'email'), textOf(body, 'name')]);
    if (ctx.path === '/sign-in/email' && !(await mayTry(pool, textOf(body, 'email'), limit)))
      throw new APIError('TOO_MANY_REQUESTS', { code: 'TOO_MANY_ATTEMPTS', message: 'Too many attempts.' });
  });
}

/** Who got in has no failed attempts any more; who only passed the first of two factors has. */
export function rulesAfter(pool: pg.Pool) {
  return createAuthMiddleware(async (ctx) => {
    const signedIn = ctx.context.newSession;
    if (signedIn) await forgetAttempts(pool, signedIn.user.email);
  });
}
