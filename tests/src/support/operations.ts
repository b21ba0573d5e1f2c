/**
 * Every operation of the served document, and how to ask it about real things. The tests that are made from the
 * document use this; a new operation comes in by itself, and a new parameter of a path needs a thing here.
 */

import { makeKey } from '@garboard/actions/api-key/make-key.ts';
import type { ActionContext } from '@garboard/actions/context.ts';
import { invitePerson } from '@garboard/actions/organisation/invite-person.ts';
import { saveView } from '@garboard/actions/saved-view/save-view.ts';
import { makeShareLink } from '@garboard/actions/share/make-share-link.ts';
import type { Operation } from '@garboard/api/openapi/conforms.test-support.ts';
import type { Pools } from '@garboard/db/pool.ts';
import { type Client, document } from './api.ts';
import { anUpload, aPhotograph } from './evidence.ts';
import { aFinding, aFindingReportedDone } from './findings.ts';
import { aNotice } from './notices.ts';
import { accepted } from './organisation.ts';
import { anOwnRule } from './own-rules.ts';
import { anAddress, aPerson } from './people.ts';
import { anItem, anOverride, aVessel } from './vessels.ts';
import { aLimitation, aReadyVisit, aReferral, aSealedVisit, aShortRoute, aVisit } from './visits.ts';

export type Asked = {
  readonly name: string;
  readonly method: string;
  readonly path: string;
  readonly operation: Operation;
};
export type Schema = { readonly [key: string]: unknown };

export const ALL: readonly Asked[] = Object.entries(document.paths).flatMap(([path, methods]) =>
  Object.entries(methods).map(([method, operation]) => ({
    name: operation.operationId,
    method: method.toUpperCase(),
    path,
    operation,
  })),
);
export const WITH_CREDENTIALS = ALL.filter(({ operation }) => (operation.security ?? []).length > 0);
export const WITH_BODY = WITH_CREDENTIALS.filter(({ operation }) => bodySchema(operation) !== undefined);

/** Whether a program's key will not do. */
export const isForPersons = ({ security = [] }: Operation) => security.every((each) => !('apiKey' in each));

/** For `it.each`: the operation's name, and the operation. */
export const named = (some: readonly Asked[]) => some.map((asked) => [asked.name, asked] as const);

/** What stands in a path's parameters, by their names. */
export type Things = Readonly<Record<string, string>>;

type Ground = {
  readonly client: Client;
  readonly ctx: ActionContext;
  readonly vesselId: string;
  readonly home: Pools | undefined;
};
type Maker = { readonly names: readonly string[]; make(ground: Ground): Promise<Things> };

/** Things that are made together, and the parameters that they stand for. A new parameter: make its thing here. */
const MAKERS: readonly Maker[] = [
  {
    names: ['itemId'],
    make: async ({ ctx, vesselId }) => ({ itemId: (await anItem(ctx, vesselId, 'liferaft')).item.id }),
  },
  {
    names: ['findingId', 'otherFindingId', 'mendedFindingId'],
    make: ({ ctx, vesselId }) => someFindings(ctx, vesselId),
  },
  {
    names: ['visitId', 'readyVisitId', 'sealedVisitId', 'limitationId', 'referralId'],
    make: ({ ctx, vesselId }) => someVisits(ctx, vesselId),
  },
  {
    names: ['evidenceId', 'uploadId'],
    make: async ({ ctx, vesselId }) => ({
      evidenceId: await aPhotograph(ctx, vesselId),
      uploadId: (await anUpload(ctx, vesselId, Buffer.alloc(100_000))).id,
    }),
  },
  { names: ['overrideId'], make: async ({ ctx, vesselId }) => ({ overrideId: (await anOverride(ctx, vesselId)).id }) },
  {
    names: ['viewId'],
    make: async ({ ctx }) => {
      const ours = { name: 'Ours', page: 'due', filters: {}, shared: true } as const;
      return { viewId: accepted(await saveView(ctx, ours)).id };
    },
  },
  {
    names: ['ruleId', 'changeId'],
    make: async ({ ctx }) => {
      const rule = await anOwnRule(ctx);
      return { ruleId: rule.id, changeId: rule.versions[0]?.changeId ?? '' };
    },
  },
  {
    names: ['noticeId'],
    make: async ({ ctx }) => ({ noticeId: (await aNotice(ctx, { kinds: ['liferaft'], makers: [], serials: [] })).id }),
  },
  {
    names: ['personId', 'invitationId'],
    make: async ({ client, ctx, home }) => {
      const { id: personId } = await aPerson(client.organisation, { role: 'viewer' }, home);
      const invited = { email: anAddress(), role: 'viewer', vesselIds: 'all' } as const;
      return { personId, invitationId: accepted(await invitePerson(ctx, invited)).invitation.id };
    },
  },
  {
    names: ['keyId'],
    make: async ({ ctx }) => {
      const wanted = {
        name: 'ours',
        role: 'viewer',
        vesselIds: 'all',
        permissions: 'all',
        expiresAt: dayAfter(ctx),
      } as const;
      return { keyId: accepted(await makeKey(ctx, wanted)).key.id };
    },
  },
  {
    names: ['linkId'],
    make: async ({ ctx }) => {
      const shown = { label: 'ours', vesselIds: 'all', showsValue: false, purpose: 'look', findingIds: [] } as const;
      return { linkId: accepted(await makeShareLink(ctx, { ...shown, expiresAt: dayAfter(ctx) })).link.id };
    },
  },
];
const dayAfter = ({ now }: ActionContext) => new Date(now.getTime() + 86_400_000);

/**
 * One thing for each parameter, in the client's own organisation; of one operation only what it needs. There is always
 * a vessel with something aboard.
 */
export async function thingsOf(client: Client, home?: Pools, of?: Asked): Promise<Things> {
  const ctx = client.organisation.ctx();
  const { id: vesselId } = await aVessel(ctx, ['solas']);
  const needed = of && namesIn(of);
  const makers = MAKERS.filter(
    ({ names }) => !needed || names.includes('itemId') || names.some((each) => needed.has(each)),
  );
  let things: Things = { vesselId, sessionId: ctx.actor.id, ...CATALOGUE };
  for (const { make } of makers) things = { ...things, ...(await make({ client, ctx, vesselId, home })) };
  return things;
}

/** What an operation's address and body name. */
function namesIn({ path }: Asked): ReadonlySet<string> {
  const { thing = {}, names = {} } = PARTICULAR[path] ?? {};
  return new Set([...parametersOf(path), ...Object.values(thing), ...Object.values(names)]);
}

/** Parameters whose things are the same for everybody. */
const CATALOGUE: Readonly<Record<string, string>> = { craft: 'sailing_yacht' };

/** Ids that nothing has: whatever its name, a parameter gets the same one. */
export const NO_ONE_S: Things = new Proxy<Record<string, string>>(CATALOGUE, {
  get: (known, name) => known[String(name)] ?? '0198c5a2-7b1e-7c3d-9a41-5f2e8d7c6b5a',
});

/** Whether the path leads to something that belongs to an organisation. */
export const isAboutAThing = ({ path }: Asked) =>
  parametersOf(path).some((parameter) => !Object.hasOwn(CATALOGUE, parameter));

/** Found, found besides, and reported done by somebody who asks nothing more. */
async function someFindings(ctx: ActionContext, vesselId: string): Promise<Things> {
  const found = await aFinding(ctx, vesselId, {}, '2026-11-20');
  const other = await aFinding(ctx, vesselId, { what: 'Regulator out of date' }, '2026-11-20');
  const mended = await aFindingReportedDone(ctx, vesselId);
  return { findingId: found.id, otherFindingId: other.id, mendedFindingId: mended.id };
}

/** One that is open, with what it could not see and whom it asks; one that is ready to be completed; one that is sealed. */
async function someVisits(ctx: ActionContext, vesselId: string): Promise<Things> {
  const open = await aVisit(ctx, vesselId);
  const limitation = await aLimitation(ctx, open.id);
  const referral = await aReferral(ctx, open.id);
  await aShortRoute(ctx);
  const dinghy = await aVessel(ctx);
  const ready = await aReadyVisit(ctx, dinghy.id);
  const sealed = await aSealedVisit(ctx, dinghy.id);
  return {
    ...{ visitId: open.id, readyVisitId: ready.id, sealedVisitId: sealed.id },
    ...{ limitationId: limitation.id, referralId: referral.id },
  };
}

/** An operation that wants another thing than the first of its sort, the version that it has, and what its body names. */
const PARTICULAR: Record<
  string,
  { readonly thing?: Record<string, string>; readonly version?: number; readonly names?: Record<string, string> }
> = {
  '/v1/findings/{findingId}/verification': { thing: { findingId: 'mendedFindingId' }, version: 2 },
  '/v1/findings/{findingId}/merge': { names: { into: 'otherFindingId' } },
  '/v1/visits/{visitId}/completion': { thing: { visitId: 'readyVisitId' } },
  '/v1/visits/{visitId}/addenda': { thing: { visitId: 'sealedVisitId' } },
  '/v1/visits/{visitId}/sealed-copy': { thing: { visitId: 'sealedVisitId' } },
  '/v1/limitations/{limitationId}/answers': { names: { visitId: 'visitId' } },
};

const OCTETS = 'application/octet-stream';

/** What kind of body is asked for; `undefined` where none is. */
export const contentTypeOf = ({ requestBody }: Operation): string | undefined =>
  Object.keys(requestBody?.content ?? {})[0];

export const ifMatchOf = ({ path }: Asked): string => `"${PARTICULAR[path]?.version ?? 1}"`;

/** The document's own example, about the things that are really there; of a body of bytes, some. */
export function bodyOf({ path, operation }: Asked, things: Things): unknown {
  if (contentTypeOf(operation) === OCTETS) return 'some bytes';
  const names = Object.entries(PARTICULAR[path]?.names ?? {}).map(([name, thing]) => [name, things[thing]]);
  const example = exampleOf(operation);
  return names.length > 0 ? { ...(example as object), ...Object.fromEntries(names) } : example;
}

export function addressOf(path: string, things: Things): string {
  return parametersOf(path).reduce((address, parameter) => {
    const thing = things[PARTICULAR[path]?.thing?.[parameter] ?? parameter];
    if (thing === undefined)
      throw new Error(`make a thing for {${parameter}} in thingsOf, tests/src/support/operations.ts`);
    return address.replace(`{${parameter}}`, thing);
  }, path);
}

type Parameter = { readonly in: string; readonly name: string; readonly required?: boolean; readonly schema?: Schema };

/** The parameters that a question cannot be without, with the document's own examples. */
export function questionOf(operation: Operation): string {
  const parameters = ((operation as { parameters?: readonly Parameter[] }).parameters ?? []).filter(
    (each) => each.in === 'query' && each.required,
  );
  const asked = new URLSearchParams(parameters.map(({ name, schema }) => [name, String(schema?.example)]));
  return parameters.length > 0 ? `?${asked}` : '';
}

const parametersOf = (path: string): string[] => [...path.matchAll(/\{(\w+)\}/g)].map(([, name]) => String(name));

/** The shape of the JSON that is asked for; `undefined` where none is. */
export function bodySchema({ requestBody }: Operation): Schema | undefined {
  const schema = requestBody?.content['application/json']?.schema;
  return schema && resolve(schema);
}

/** The one text that fits, where there is only one: it says which shape of several it is. */
export function onlyWord(part: Schema): unknown {
  const words = 'const' in part ? [part.const] : ((resolve(part).enum ?? []) as readonly unknown[]);
  return words.length === 1 ? words[0] : undefined;
}

/** Of a choice of shapes the one that the example has. */
export function shapeOfExample(operation: Operation): Schema {
  const whole = bodySchema(operation) ?? {};
  const choices = (whole.oneOf as readonly Schema[] | undefined)?.map(resolve);
  const example = exampleOf(operation) as Record<string, unknown>;
  const fits = (choice: Schema) =>
    Object.entries((choice.properties ?? {}) as Record<string, Schema>).every(([name, part]) =>
      [undefined, example[name]].includes(onlyWord(part)),
    );
  return choices?.find(fits) ?? whole;
}

/** The document's own example of what is asked for. */
export function exampleOf(operation: Operation): unknown {
  return bodySchema(operation)?.example;
}

export function resolve(schema: Schema): Schema {
  const name = typeof schema.$ref === 'string' ? schema.$ref.split('/').at(-1) : undefined;
  return name === undefined ? schema : (document.components.schemas[name] ?? {});
}
