/** GET /v1/vessel-templates: what to start a vessel's list from. */
import { VesselTemplatePage } from '@garboard/contract/vessel/template.ts';
import { VESSEL_TEMPLATES, type VesselTemplate } from '@garboard/domain/vessel/template.ts';
import { createRoute, z } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import { page, READ_PROBLEMS, routes, SIGNED_IN } from '../openapi/declare.ts';
import { access } from '../organisation/access.ts';
import { badCursor, nextCursor, readCursor } from '../request/cursor.ts';
import { pageQuery } from '../request/query-params.ts';
import { pageOfCatalogue } from '../rule/page-of-catalogue.ts';

const route = createRoute({
  method: 'get',
  path: '/v1/vessel-templates',
  operationId: 'listVesselTemplates',
  tags: ['Catalogue'],
  summary: 'List the templates that a vessel’s list can be started from',
  description:
    'What such a boat often has aboard, invented for this program: no source, and not what any law or certificate asks for. Confirm each row, leave out what is not aboard, and send the rest to `POST /v1/vessels/{vesselId}/items/batch`.',
  security: SIGNED_IN,
  request: { query: z.strictObject(pageQuery) },
  responses: { 200: page(VesselTemplatePage, 'A page of templates.'), ...READ_PROBLEMS },
});

export function listTemplatesRoute(deps: Deps) {
  return routes().openapi({ ...route, middleware: access(deps, 'read') }, (c) => {
    const { limit, cursor } = c.req.valid('query');
    const question = { list: 'vessel-templates' };
    const start = readCursor(cursor, question, z.string());
    const found = start.ok && pageOfCatalogue(VESSEL_TEMPLATES, limit, start.after);
    if (!found) return badCursor(c);
    return c.json({ items: found.entries.map(present), nextCursor: nextCursor(c, question, found.last) }, 200);
  });
}

const present = ({ id, name, forWhom, items }: VesselTemplate) => ({
  id,
  name,
  forWhom,
  items: items.map(({ kind, label, zone, quantity }) => ({ kind, label, zone, quantity })),
});
