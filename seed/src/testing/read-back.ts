/** For tests: everything that was laid out for an organisation, in order, without what differs by nature. */
import { listFacts } from '@garboard/db/item/facts.ts';
import { listItems } from '@garboard/db/item/items.ts';
import { listObligations } from '@garboard/db/item/obligations.ts';
import type { Db } from '@garboard/db/pool.ts';
import { inOrganisation, type Scoped, wholeFleet } from '@garboard/db/scope.ts';
import { listEvents } from '@garboard/db/vessel/events.ts';
import { listSituations } from '@garboard/db/vessel/situations.ts';
import { listVessels } from '@garboard/db/vessel/vessels.ts';

/** More than any demo vessel or fleet has. */
const ALL = 1000;
const NOT_COMPARED: ReadonlySet<string> = new Set(['id', 'itemId', 'vesselId', 'corrects', 'factId', 'factIds']);

export async function readBack(db: Db, organisationId: string) {
  return inOrganisation(db, wholeFleet(organisationId), async (tx) => {
    const { rows } = await listVessels(tx, ALL);
    const vessels = [];
    for (const vessel of rows) vessels.push({ ...vessel, ...(await readVessel(tx, vessel.id)) });
    return vessels;
  });
}

async function readVessel(tx: Scoped, vesselId: string) {
  const { rows } = await listItems(tx, vesselId, ALL);
  const items = [];
  for (const item of rows) {
    const facts = await listFacts(tx, item.id, ALL);
    items.push({ ...item, facts: facts.rows, obligations: await listObligations(tx, item.id) });
  }
  const situations = await listSituations(tx, vesselId, ALL);
  const events = await listEvents(tx, vesselId, ALL);
  return { items, situations: situations.rows, events: events.rows };
}

/** As text, without identifiers: two organisations laid out alike give the same. */
export function comparable(laidOut: unknown): string {
  return JSON.stringify(laidOut, (key, value) => {
    if (NOT_COMPARED.has(key)) return undefined;
    if (key === 'ruleId') return String(value).replace(/^(notice:.*|[0-9a-f]{8}-.*)/, 'made here');
    return key === 'struckOutBy' ? value !== null : value;
  });
}
