/** Stands behind what nobody signed in asked for. */
import type { Db } from '@garboard/db/pool.ts';
import { type Scoped, wholeFleet } from '@garboard/db/scope.ts';
import type { Write } from '../write.ts';

const UPKEEP = { kind: 'upkeep', id: '00000000-0000-7000-8000-000000000000', role: 'owner' } as const;

export function asUpkeep(owner: Db, tx: Scoped, organisationId: string, now: Date): Write {
  return { tx, ctx: { ...wholeFleet(organisationId), db: owner, actor: UPKEEP, requestId: 'administration', now } };
}
