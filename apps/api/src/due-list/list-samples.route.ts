/** GET /v1/fleet-samples: one extinguisher of each type and year aboard that must be discharged, whichever it is. */
import { type FleetSample, FleetSampleList } from '@garboard/contract/due-list/fleet-sample.ts';
import { readSampled, type SampledVessel } from '@garboard/db/due-list/read-samples.ts';
import { loadOrganisation } from '@garboard/db/organisation/organisations.ts';
import { type Day, formatDay } from '@garboard/domain/calendar/day.ts';
import { standingOn } from '@garboard/domain/due-list/standing.ts';
import { dischargeSamples, type Sample } from '@garboard/domain/item/fleet-sample.ts';
import { dueFrom } from '@garboard/domain/item/lead-time.ts';
import { findRule } from '@garboard/domain/rule/rules.ts';
import { createRoute, z } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import { presentSource } from '../item/present-obligation.ts';
import { json, READ_PROBLEMS, routes, SIGNED_IN } from '../openapi/declare.ts';
import { access } from '../organisation/access.ts';
import { read } from '../request/action-context.ts';
import { asAt } from '../request/as-at.ts';
import { asAtQuery } from '../request/query-params.ts';

const RULE = 'fe-imo';

const route = createRoute({
  method: 'get',
  path: '/v1/fleet-samples',
  operationId: 'listFleetSamples',
  tags: ['Due list'],
  summary: 'List what some of a vessel’s things owe together',
  description:
    'Under SOLAS one portable extinguisher of each type and year of manufacture aboard is discharged every five years, whichever it is: no single one owes it, so it is in no due list. Record it as `tested` with `test: discharge`. That it is counted by ship is from memory.',
  security: SIGNED_IN,
  request: { query: z.strictObject(asAtQuery) },
  responses: { 200: json(FleetSampleList, 'Every sample, the earliest first.'), ...READ_PROBLEMS },
});

export function listSamplesRoute(deps: Deps) {
  return routes().openapi({ ...route, middleware: access(deps, 'read') }, async (c) => {
    const asked = c.req.valid('query');
    const { at, vessels } = await read(c, deps, async (tx) => {
      const { timeZone } = await loadOrganisation(tx);
      const at = await asAt(tx, asked, deps.now(), timeZone);
      return { at, vessels: await readSampled(tx, at.cut ?? { asOf: at.day }) };
    });
    const found = vessels.map((each) => ({ ...each, ...dischargeSamples(each.sampled) }));
    const items = found.flatMap((each) => each.samples.map((sample) => present(each, sample, at.day)));
    const unknown = found.flatMap(({ vessel, labels, unknown: ids }) =>
      ids.map((itemId) => ({ vessel, thing: { itemId, label: labels.get(itemId) ?? '' } })),
    );
    items.sort((a, b) => (a.by < b.by ? -1 : a.by > b.by ? 1 : 0));
    return c.json({ asOf: at.text, items, unknown, nextCursor: null }, 200);
  });
}

function present(
  { vessel, labels }: SampledVessel,
  { kind, madeIn, howMany, by, among }: Sample,
  day: Day,
): FleetSample {
  const source = findRule(RULE)?.source;
  if (!source) throw new Error(`no rule ${RULE}`);
  const outcome = { kind: 'dated', dueFrom: dueFrom(by, null), dueOn: by, overdueAfter: by, windows: [] } as const;
  return {
    vessel,
    kind,
    madeIn,
    howMany,
    by: formatDay(by),
    standing: standingOn(outcome, day),
    among: among.map((itemId) => ({ itemId, label: labels.get(itemId) ?? '' })),
    ruleId: RULE,
    reference: presentSource(source),
  };
}
