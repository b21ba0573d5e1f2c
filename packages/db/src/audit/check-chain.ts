/** Goes along the whole chain of an organisation and says where it is broken first. */
import type { Scoped } from '../scope.ts';
import { type Head, hashOf, NO_HASH } from './chain.ts';
import { readChain } from './read-chain.ts';

/** `at` is the number of the first row that is not what it was. */
export type Break = {
  readonly at: number;
  readonly what: 'changed' | 'missing' | 'not_linked' | 'cut_off' | 'not_counted' | 'not_as_kept' | 'before_chain';
};

/** `rows` is how many are in the chain, `beforeChain` how many are older than it. */
export type CheckedChain = {
  readonly rows: number;
  readonly beforeChain: number;
  readonly head: Head;
  readonly broken: Break | null;
};

/** `kept`: a head that was written down elsewhere earlier; only that shows a tail that was written anew. */
export async function checkChain(tx: Scoped, organisationId: string, kept?: Head): Promise<CheckedChain> {
  const head = await loadHead(tx, organisationId);
  const beforeChain = await countBeforeChain(tx, organisationId);
  const { last, broken } = await walk(tx, organisationId, kept);
  const found =
    broken ?? heldAgainst(head, last) ?? shorterThan(kept, last) ?? (beforeChain === head.beforeChain ? null : BEFORE);
  return { rows: last.sequence, beforeChain, head: { sequence: head.sequence, hash: head.hash }, broken: found };
}

const BEFORE: Break = { at: 0, what: 'before_chain' };

async function walk(
  tx: Scoped,
  organisationId: string,
  kept: Head | undefined,
): Promise<{ last: Head; broken: Break | null }> {
  let last: Head = { sequence: 0, hash: NO_HASH };
  for await (const { hash, ...content } of readChain(tx, organisationId)) {
    const at = last.sequence + 1;
    if (content.sequence !== at) return { last, broken: { at, what: 'missing' } };
    if (content.previous !== last.hash) return { last, broken: { at, what: 'not_linked' } };
    if (hashOf(content) !== hash) return { last, broken: { at, what: 'changed' } };
    if (kept?.sequence === at && kept.hash !== hash) return { last, broken: { at, what: 'not_as_kept' } };
    last = { sequence: at, hash };
  }
  return { last, broken: null };
}

function heldAgainst(head: Head, last: Head): Break | null {
  if (head.sequence > last.sequence) return { at: last.sequence + 1, what: 'cut_off' };
  if (head.sequence < last.sequence) return { at: head.sequence + 1, what: 'not_counted' };
  return head.hash === last.hash ? null : { at: last.sequence, what: 'changed' };
}

const shorterThan = (kept: Head | undefined, last: Head): Break | null =>
  kept && kept.sequence > last.sequence ? { at: last.sequence + 1, what: 'cut_off' } : null;

async function loadHead(tx: Scoped, organisationId: string): Promise<Head & { beforeChain: number }> {
  const row = await tx
    .selectFrom('audit_head')
    .selectAll()
    .where('organisation_id', '=', organisationId)
    .executeTakeFirst();
  return row
    ? { sequence: row.sequence, hash: row.hash.toString('hex'), beforeChain: row.before_chain }
    : { sequence: 0, hash: NO_HASH, beforeChain: 0 };
}

async function countBeforeChain(tx: Scoped, organisationId: string): Promise<number> {
  const { n } = await tx
    .selectFrom('audit')
    .select((eb) => eb.fn.countAll<number>().as('n'))
    .where('organisation_id', '=', organisationId)
    .where('sequence', 'is', null)
    .executeTakeFirstOrThrow();
  return n;
}
