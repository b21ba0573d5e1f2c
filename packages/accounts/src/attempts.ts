/**
 * How often a password may be tried for one account, wherever the attempts come from. Counted in the database, so
 * that several processes count together. An address nobody has is counted alike: the answer tells nothing.
 */
import { createHash } from 'node:crypto';
import type pg from 'pg';

export type AttemptLimit = { readonly max: number; readonly windowMs: number };

const keyOf = (email: string) => `account:${createHash('sha256').update(email.trim().toLowerCase()).digest('hex')}`;

/** Counts one attempt; `false` when there were too many in the window. */
export async function mayTry(pool: pg.Pool, email: string, { max, windowMs }: AttemptLimit): Promise<boolean> {
  const { rows } = await pool.query<{ count: number }>(
    `insert into "rateLimit" as r ("key", "count", "lastRequest") values ($1, 1, $2)
       on conflict ("key") do update set
         "count" = case when r."lastRequest" <= $2 - $3::bigint then 1 else r."count" + 1 end,
         "lastRequest" = case when r."lastRequest" <= $2 - $3::bigint then $2 else r."lastRequest" end
     returning "count"`,
    [keyOf(email), Date.now(), windowMs],
  );
  return (rows[0]?.count ?? 0) <= max;
}

export async function forgetAttempts(pool: pg.Pool, email: string): Promise<void> {
  await pool.query('delete from "rateLimit" where "key" = $1', [keyOf(email)]);
}
