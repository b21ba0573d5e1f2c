/** GET /v1/due: everything with a date across the fleet, ordered by the last day on which nothing is wrong yet. */
import { DueList, DueSource } from '@garboard/contract/due-list/due-list.ts';
import { StandingCode, WeightCode } from '@garboard/contract/item/obligation.ts';
import { CalendarDay, Id } from '@garboard/contract/shared.ts';
import { SchemeCode } from '@garboard/contract/vessel/vessel.ts';
import { type DueFilter, dueKeyOf } from '@garboard/db/due-list/due-entry.ts';
import { readDueList } from '@garboard/db/due-list/read-due-list.ts';
import { loadOrganisation } from '@garboard/db/organisation/organisations.ts';
import { createRoute, z } from '@hono/zod-openapi';
import type { Deps } from '../deps.ts';
import { page, READ_PROBLEMS, routes, SIGNED_IN } from '../openapi/declare.ts';
import { access } from '../organisation/access.ts';
import { problem } from '../problem/problem.ts';
import { read } from '../request/action-context.ts';
import { asAt } from '../request/as-at.ts';
import { badCursor, nextCursor, readCursor } from '../request/cursor.ts';
import { given } from '../request/given.ts';
import { asAtQuery, pageQuery, wholeNumber } from '../request/query-params.ts';
import { KnownKind } from '../rule/known-kind.ts';
import { presentLine } from './present-due.ts';

const filters = {
  vesselId: Id.optional(),
  kind: KnownKind.optional(),
  scheme: SchemeCode.optional(),
  weight: WeightCode.optional(),
  source: DueSource.optional().meta({
    description:
      'What kind of thing is due: what a rule or a safety notice asks, or what was found and waits for somebody.',
  }),
  standing: StandingCode.optional().meta({
    description: 'Without it: everything that has a date. `unknown` asks for the group of things that have none.',
  }),
  suspended: z.literal('true').optional().meta({
    description:
      'The group of what is suspended on the day, as the vessel is laid up. Without it none of that is listed; it does not go with `standing`.',
  }),
  horizonDays: wholeNumber({ min: 0, max: 36_600 })
    .optional()
    .meta({ description: 'Only what is overdue after at most so many days. It does not bear on `unknown`.' }),
};

const route = createRoute({
  method: 'get',
  path: '/v1/due',
  operationId: 'listDue',
  tags: ['Due list'],
  summary: 'List what is due across the fleet',
  description: [
    'Obligations and, in the same order, findings and what else waits for somebody; these have no rule, so `kind`, `scheme`, `weight` and `suspended` leave them out.',
    'Ordered by `overdueAfter`. Things without a date (`standing=unknown`) and duties suspended while a vessel is laid up (`suspended=true`) are groups of their own, counted in every answer.',
    'The day asked is, by default, today in the organisation’s time zone; the pages after the first keep it.',
    'For a day gone by, or with `knownAt`, everything is worked out anew from the facts, which costs the whole fleet.',
  ].join(' '),
  security: SIGNED_IN,
  request: { query: z.strictObject({ ...filters, ...asAtQuery, ...pageQuery }) },
  responses: {
    200: page(DueList, 'A page of the due list, and the counts of what the filters mean.'),
    ...READ_PROBLEMS,
  },
});

const EITHER = { pointer: '#query/suspended', detail: 'is a group of its own: it does not go with standing' };

const Key = z.object({
  day: CalendarDay,
  overdueAfter: z.union([CalendarDay, z.literal('infinity')]),
  itemId: Id,
  ruleId: z.string(),
  duty: z.string(),
});

export function listDueRoute(deps: Deps) {
  return routes().openapi({ ...route, middleware: access(deps, 'read') }, async (c) => {
    const { limit, cursor, asOf, knownAt, ...asked } = c.req.valid('query');
    if (asked.suspended && asked.standing) return problem(c, 'invalid', { errors: [EITHER] });
    const filter = toFilter(asked);
    const question = { list: 'due', filter, asOf, knownAt };
    const start = readCursor(cursor, question, Key);
    if (!start.ok) return badCursor(c);
    const { at, rows, more, counts, vesselsOverdue, matters } = await read(c, deps, async (tx) => {
      const { timeZone } = await loadOrganisation(tx);
      const at = await asAt(tx, { asOf: asOf ?? start.after?.day, knownAt }, deps.now(), timeZone);
      return { at, ...(await readDueList(tx, { ...at, ...start, filter, limit })) };
    });
    const last = more ? rows.at(-1) : undefined;
    const next = nextCursor(c, question, last && { day: at.text, ...dueKeyOf(last) });
    return c.json(
      {
        asOf: at.text,
        counts,
        vesselsOverdue,
        matters,
        items: rows.map((row) => presentLine(row, at.day)),
        nextCursor: next,
      },
      200,
    );
  });
}

type Asked = { [K in keyof Omit<DueFilter, 'suspended'>]?: DueFilter[K] | undefined } & {
  suspended?: 'true' | undefined;
};

function toFilter({ suspended, standing, horizonDays, ...asked }: Asked): DueFilter {
  const horizon = standing === 'unknown' ? {} : { horizonDays };
  return given({ ...asked, ...horizon, ...(suspended ? { suspended: true } : { standing }) }) as DueFilter;
}
