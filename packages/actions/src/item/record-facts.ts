/**
 * Records many facts asked for at once: each in a transaction of its own, so that one that is refused does not
 * take the others with it. Repeated with the same key, what was left undone is done, and nothing twice.
 */
import { createHash } from 'node:crypto';
import type { ActionContext } from '../context.ts';
import { done, type Written } from '../result.ts';
import { write } from '../write.ts';
import { type FactRecorded, type NewFact, recordFact } from './record-fact.ts';

type RowRefused = 'not_found' | 'invalid';
export type RowResult = Written<FactRecorded, RowRefused>;

/** In the order given. Fails whole only where nothing was begun: the role may not, or the key was another's. */
export async function recordFacts(
  ctx: ActionContext,
  rows: readonly Omit<NewFact, 'expectedVersion'>[],
): Promise<Written<readonly RowResult[], never>> {
  // The key is the whole request's before it is any row's: a key that stood for another request begins nothing.
  const claimed = await write(ctx, 'record_facts', async () => done(null));
  if (!claimed.ok) return claimed;
  const results: RowResult[] = [];
  for (const [index, row] of rows.entries()) results.push(await recordRow(contextOf(ctx, index), row));
  return { ...done(results), replayed: results.every((result) => result.ok && result.replayed === true) };
}

/** One row has no version to hold against, so it cannot be stale. */
async function recordRow(ctx: ActionContext, row: NewFact): Promise<RowResult> {
  const result = await recordFact(ctx, row);
  if (!result.ok && result.failure.kind === 'stale') throw new Error('a row without a version was stale');
  return result as RowResult;
}

/** Each row keeps its own answer under a key that follows from the request's. */
function contextOf(ctx: ActionContext, index: number): ActionContext {
  if (!ctx.once) return ctx;
  const key = createHash('sha256').update(ctx.once.key).digest('base64url');
  return { ...ctx, once: { ...ctx.once, key: `row ${index} of ${key}` } };
}
