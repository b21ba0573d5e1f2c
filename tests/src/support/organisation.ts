/** A fresh organisation for one test: nothing that another test did can be seen in it. */
import { randomUUID } from 'node:crypto';
import type { ActionContext } from '@garboard/actions/context.ts';
import { createApiKey, createOrganisation } from '@garboard/actions/organisation/administer.ts';
import type { Result } from '@garboard/actions/result.ts';
import type { Pools } from '@garboard/db/pool.ts';
import { wholeFleet } from '@garboard/db/scope.ts';
import type { Particulars } from '@garboard/db/vessel/vessel-record.ts';
import type { Role } from '@garboard/domain/organisation/permission.ts';
import type { SchemeId } from '@garboard/domain/rule/scheme.ts';

export const TODAY = '2026-11-25';
/** Noon in Greenwich on that day. */
export const NOW = new Date(`${TODAY}T12:00:00.000Z`);
const YEAR_MS = 365 * 86_400_000;

export type TestOrganisation = {
  readonly id: string;
  readonly name: string;
  /** What an action needs, as somebody with that role would come. */
  ctx(role?: Role, at?: Date): ActionContext;
  /** The text of a new API key with that role. */
  key(role?: Role, expiresAt?: Date): Promise<string>;
};

export async function mintOrganisation(pools: Pools, timeZone = 'UTC'): Promise<TestOrganisation> {
  const name = `Test Fleet ${randomUUID()}`;
  const { id } = accepted(await createOrganisation(pools.owner, { name, timeZone, now: NOW }));
  return {
    id,
    name,
    ctx: (role = 'owner', at = NOW) => ({
      db: pools.app,
      ...wholeFleet(id),
      actor: { kind: 'person', id: randomUUID(), sessionId: randomUUID(), role },
      requestId: randomUUID(),
      now: at,
    }),
    key: (role = 'owner', expiresAt = new Date(Date.now() + YEAR_MS)) =>
      createApiKey(pools.owner, { organisationId: id, role, name: 'test', now: NOW, expiresAt }),
  };
}

/** The value of a result that a test takes for granted; throws with the failure otherwise. */
export function accepted<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(`refused: ${JSON.stringify(result.failure)}`);
  return result.value;
}

/** A vessel of which nothing is known but her name and her schemes. */
export function particulars(name = 'Teal', schemes: readonly SchemeId[] = []): Particulars {
  return {
    name,
    type: null,
    builtYear: null,
    lengthOverallM: null,
    hullMaterial: null,
    rig: null,
    beamM: null,
    draughtM: null,
    waterlineLengthM: null,
    displacementKg: null,
    personsMax: null,
    identifiers: {},
    value: null,
    schemes,
    timeZone: 'UTC',
    homePort: null,
  };
}
