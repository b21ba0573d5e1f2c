/**
 * Two organisations share one connection, their requests in any order, and every now and then the connection is cut
 * in the middle: what the one had set must never be what the other reads or writes under.
 */
import { createApp } from '@garboard/api/app.ts';
import { openPools } from '@garboard/db/pool.ts';
import { sql } from 'kysely';
import { afterAll, describe, expect, it } from 'vitest';
import { databaseUrl, pools } from '../support/database.ts';
import { files } from '../support/files.ts';
import { reportFigure, size } from '../support/long.ts';
import { ALL, type Asked, addressOf, bodyOf, contentTypeOf, ifMatchOf, questionOf } from '../support/operations.ts';
import { NOW } from '../support/organisation.ts';
import { random } from '../support/random.ts';
import { aFleet, type Fleet, marksOf } from './two-fleets.ts';

const MINUTE = 60_000;
const STEPS = size(600, 100_000);
const AT_ONCE = 4;
/** Two new organisations after so many: a fleet that grows without end makes every list of it slower. */
const STEPS_A_FLEET = 600;

const one = openPools({ url: databaseUrl, size: 1 });
afterAll(() => one.close());
const app = createApp({ pools: one, files, now: () => NOW, log: () => {}, version: 'test' });
const OPERATIONS = ALL.filter(({ path }) => path.startsWith('/v1/'));

/** As the one, on things of the one or of the other. */
async function step(asked: Asked, ours: Fleet, of: Fleet, key: string): Promise<{ status: number; text: string }> {
  const body = bodyOf(asked, of.things);
  const response = await app.request(`${addressOf(asked.path, of.things)}${questionOf(asked.operation)}`, {
    method: asked.method,
    headers: {
      authorization: `Bearer ${ours.key}`,
      'content-type': contentTypeOf(asked.operation) ?? 'application/json',
      'if-match': ifMatchOf(asked),
      'idempotency-key': key,
    },
    ...(body !== undefined && { body: JSON.stringify(body) }),
  });
  return { status: response.status, text: await response.text() };
}

/** Whatever the application's one connection does, it is over. */
async function cut(): Promise<void> {
  const { rows } = await sql<{ pid: number }>`select pg_backend_pid() as pid`
    .execute(one.app)
    .catch(() => ({ rows: [] }));
  for (const { pid } of rows) await sql`select pg_terminate_backend(${pid})`.execute(pools.owner);
}

type Told = { readonly leaks: string[]; readonly statuses: Map<number, number>; cuts: number };

async function interleave(
  fleets: readonly [Fleet, Fleet],
  steps: number,
  next: ReturnType<typeof random>,
  told: Told,
): Promise<void> {
  const marks = fleets.map(marksOf);
  for (let at = 0; at < steps; at += AT_ONCE) {
    const together = Array.from({ length: AT_ONCE }, async (_, lane) => {
      const asked = OPERATIONS[next(OPERATIONS.length)] as Asked;
      const us = next(2) as 0 | 1;
      const them = (1 - us) as 0 | 1;
      const { status, text } = await step(asked, fleets[us], fleets[next(2) as 0 | 1], `step-${at}-${lane}`);
      told.statuses.set(status, (told.statuses.get(status) ?? 0) + 1);
      // An address that named their thing comes back in no answer either.
      if (marks[them]?.some((mark) => text.includes(mark))) told.leaks.push(`${asked.name} ${status}`);
    });
    const isCut = next(12) === 0;
    if (isCut) told.cuts++;
    await Promise.all(isCut ? [...together, cut()] : together);
  }
}

describe('two organisations on one connection', { timeout: 60 * MINUTE }, () => {
  it('are never told an id of the other, however their requests fall and whenever the connection is cut', async () => {
    const next = random(1906);
    const told: Told = { leaks: [], statuses: new Map(), cuts: 0 };
    for (let at = 0; at < STEPS; at += STEPS_A_FLEET)
      await interleave([await aFleet(), await aFleet()], Math.min(STEPS_A_FLEET, STEPS - at), next, told);
    const { leaks, statuses, cuts } = told;
    expect(leaks).toEqual([]);
    expect(cuts).toBeGreaterThan(2);
    expect(statuses.get(200) ?? 0).toBeGreaterThan(STEPS / 10);
    expect(statuses.get(404) ?? 0).toBeGreaterThan(STEPS / 20);
    reportFigure('steps of two organisations on one connection, cuts', `${STEPS}, ${cuts}`);
  });
});
