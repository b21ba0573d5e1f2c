/**
 * How often may be asked: by one credential, and by everybody at one address. Counted in this process; with several
 * of them each counts for itself. Told in the headers of draft-ietf-httpapi-ratelimit-headers-10, so that a program
 * can pace itself.
 */
import { createHash } from 'node:crypto';
import type { Context } from 'hono';
import { createMiddleware } from 'hono/factory';
import { RateLimiterMemory, RateLimiterRes } from 'rate-limiter-flexible';
import { serializeList } from 'structured-headers';
import type { ApiEnv, Deps, RateLimits } from '../deps.ts';
import { problem } from '../problem/problem.ts';
import { clientAddress } from './client-address.ts';

const SECONDS = 60;

type Name = keyof RateLimits;
type Counted = { readonly name: Name; readonly left: number; readonly seconds: number; readonly isOver: boolean };

export function rateLimit({ rateLimits, accounts }: Deps) {
  if (!rateLimits) return createMiddleware<ApiEnv>((_, next) => next());
  const limiters = {
    credential: new RateLimiterMemory({ points: rateLimits.credential, duration: SECONDS }),
    address: new RateLimiterMemory({ points: rateLimits.address, duration: SECONDS }),
  };
  const policy = policyOf(rateLimits);
  return createMiddleware<ApiEnv>(async (c, next) => {
    const credential = credentialOf(c, accounts?.cookie.name);
    const counted = [
      ...(credential === null ? [] : [await count(limiters.credential, 'credential', credential)]),
      await count(limiters.address, 'address', clientAddress(c)),
    ];
    const told = { 'ratelimit-policy': policy, ratelimit: inHeader(counted) };
    const over = counted.filter(({ isOver }) => isOver);
    if (over.length === 0) await next();
    else c.res = problem(c, 'too-many-requests', { headers: { 'retry-after': longest(over) } });
    for (const [name, value] of Object.entries(told)) c.header(name, value);
  });
}

const longest = (over: readonly Counted[]): string => String(Math.max(...over.map(({ seconds }) => seconds)));

async function count(limiter: RateLimiterMemory, name: Name, key: string): Promise<Counted> {
  const { remainingPoints, msBeforeNext, isOver } = await consume(limiter, key);
  return { name, left: remainingPoints, seconds: Math.ceil(msBeforeNext / 1000), isOver };
}

/** The library throws its answer where the limit is passed. */
async function consume(limiter: RateLimiterMemory, key: string) {
  try {
    const { remainingPoints, msBeforeNext } = await limiter.consume(key);
    return { remainingPoints, msBeforeNext, isOver: false };
  } catch (passed) {
    if (!(passed instanceof RateLimiterRes)) throw passed;
    return { remainingPoints: 0, msBeforeNext: passed.msBeforeNext, isOver: true };
  }
}

/** Not the secret itself: nothing in the memory of a process should be worth stealing. Good or not is not asked yet. */
function credentialOf(c: Context<ApiEnv>, cookie = 'garboard_session'): string | null {
  const secret = c.req.header('authorization') ?? cookieNamed(cookie, c.req.header('cookie'));
  return secret === undefined ? null : createHash('sha256').update(secret).digest('base64url');
}

function cookieNamed(name: string, header = ''): string | undefined {
  return header.split('; ').find((each) => each.startsWith(`${name}=`));
}

const policyOf = ({ credential, address }: RateLimits): string =>
  serializeList([
    ['credential', new Map(Object.entries({ q: credential, w: SECONDS }))],
    ['address', new Map(Object.entries({ q: address, w: SECONDS }))],
  ]);

const inHeader = (counted: readonly Counted[]): string =>
  serializeList(counted.map(({ name, left, seconds }) => [name, new Map(Object.entries({ r: left, t: seconds }))]));
