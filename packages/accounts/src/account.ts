/** What a person sees of their own account, and ending their sessions. */
import type pg from 'pg';

export type AccountView = {
  readonly hasPassword: boolean;
  readonly secondFactor: boolean;
  readonly passkeys: readonly { readonly id: string; readonly name: string | null; readonly createdAt: Date | null }[];
  /** The latest first; run-out ones are left out. */
  readonly sessions: readonly {
    readonly id: string;
    readonly startedAt: Date;
    readonly endsAt: Date;
    readonly userAgent: string | null;
  }[];
};

export async function readAccount(pool: pg.Pool, personId: string): Promise<AccountView> {
  const ask = async <Row extends pg.QueryResultRow>(statement: string) =>
    (await pool.query<Row>(statement, [personId])).rows;
  const [ways] = await ask<{ password: boolean; factor: boolean }>(
    `select coalesce(u."twoFactorEnabled", false) as factor,
            exists (select from account a where a."userId" = u.id and a.password is not null) as password
       from "user" u where u.id = $1`,
  );
  return {
    hasPassword: ways?.password ?? false,
    secondFactor: ways?.factor ?? false,
    passkeys: await ask('select id, name, "createdAt" from passkey where "userId" = $1 order by "createdAt", id'),
    sessions: await ask(
      `select id, "createdAt" as "startedAt", "expiresAt" as "endsAt", nullif("userAgent", '') as "userAgent"
         from session where "userId" = $1 and "expiresAt" > now() order by "createdAt" desc, id`,
    ),
  };
}

/** `false` when it is none of the person's, or over. */
export async function endSession(pool: pg.Pool, personId: string, sessionId: string): Promise<boolean> {
  const { rowCount } = await pool.query('delete from session where "userId" = $1 and id = $2', [personId, sessionId]);
  return rowCount === 1;
}

export async function endOtherSessions(pool: pg.Pool, personId: string, keptId: string): Promise<void> {
  await pool.query('delete from session where "userId" = $1 and id <> $2', [personId, keptId]);
}
