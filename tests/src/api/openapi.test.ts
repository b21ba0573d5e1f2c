/** The served document is complete, and hangs together. */
import { type Operation, validators } from '@garboard/api/openapi/conforms.test-support.ts';
import { describe, expect, it } from 'vitest';
import { app, document } from '../support/api.ts';

type Parameter = { readonly name: string; readonly in: string; readonly description?: string };
type Told = {
  readonly operationId: string;
  readonly summary: string;
  readonly description: string;
  readonly tags: readonly string[];
  readonly security: readonly Record<string, readonly string[]>[];
  readonly parameters?: readonly Parameter[];
};
type Node = { readonly [key: string]: unknown };
type Whole = {
  readonly openapi: string;
  readonly info: {
    readonly title: string;
    readonly version: string;
    readonly description: string;
    readonly contact: Node;
    readonly license: Node;
  };
  readonly servers: readonly Node[];
  readonly tags: readonly { readonly name: string; readonly description: string }[];
  readonly components: { readonly securitySchemes: Readonly<Record<string, Node>> };
};

const whole = document as unknown as Whole;
const operations = Object.entries(document.paths).flatMap(([path, methods]) =>
  Object.entries(methods).map(([method, operation]) => ({
    method,
    path,
    operation,
    told: operation as unknown as Told,
  })),
);
const named = operations.map((each) => [each.told.operationId, each] as const);

/** Every object in the document, with the place where it stands. */
function nodes(node: unknown, place = '#'): [string, Node][] {
  if (typeof node !== 'object' || node === null) return [];
  const inner = Object.entries(node).flatMap(([key, value]) => nodes(value, `${place}/${key.replaceAll('/', '~1')}`));
  return Array.isArray(node) ? inner : [[place, node as Node], ...inner];
}

describe('the document', () => {
  it('says what it is: OpenAPI 3.1 with its own version, licence, contact and server', () => {
    expect(whole.openapi).toBe('3.1.0');
    expect(whole.info).toMatchObject({
      title: 'Garboard',
      version: '0.0.0-test',
      license: { name: 'AGPL-3.0-or-later' },
    });
    expect(whole.info.contact).toHaveProperty('name');
    expect(whole.servers).toEqual([{ url: '/', description: 'This server.' }]);
    expect(Object.keys(whole.components.securitySchemes)).toEqual(['apiKey', 'session']);
  });

  it('carries the cautions', () => {
    expect(whole.info.description).toContain('does not make a vessel safe');
    expect(whole.info.description).toContain("local law and the maker's instructions come first");
  });

  it('names every operation once', () => {
    const ids = operations.map(({ told }) => told.operationId);
    expect(ids.length).toBeGreaterThan(20);
    expect(new Set(ids).size).toBe(ids.length);
  });

  it('points only at what is there', () => {
    const references = nodes(document).flatMap(([place, { $ref }]) =>
      typeof $ref === 'string' ? [[place, $ref] as const] : [],
    );
    const schemas = Object.keys(document.components.schemas).map((name) => `#/components/schemas/${name}`);
    expect(references.length).toBeGreaterThan(100);
    expect(references.filter(([, reference]) => !schemas.includes(reference))).toEqual([]);
  });

  it('has no schema that nothing points at', () => {
    const text = JSON.stringify(document);
    expect(
      Object.keys(document.components.schemas).filter((name) => !text.includes(`"#/components/schemas/${name}"`)),
    ).toEqual([]);
  });

  it('never says that a thing must be a schema and null together, which nothing is', () => {
    const contradictions = nodes(document).filter(([, { allOf }]) => JSON.stringify(allOf ?? '').includes('"null"'));
    expect(contradictions.map(([place]) => place)).toEqual([]);
  });

  it('has patterns that every program can read', () => {
    const patterns = nodes(document).flatMap(([place, { pattern }]) =>
      typeof pattern === 'string' ? [[place, pattern] as const] : [],
    );
    for (const [place, pattern] of patterns) expect(() => new RegExp(pattern, 'u'), place).not.toThrow();
    expect(patterns.filter(([, pattern]) => /\/[a-z]*$/.test(pattern))).toEqual([]);
  });

  it('changes its ETag with its text only', async () => {
    const { headers } = await app.request('/openapi.json');
    const again = await app.request('/openapi.json', { headers: { 'if-none-match': headers.get('etag') ?? '' } });
    expect(again.status).toBe(304);
  });
});

describe.each(named)('%s', (_, { method, path, operation, told }) => {
  it('is told in words and stands in one of the groups', () => {
    expect(told.summary.length).toBeGreaterThan(5);
    expect(told.description.length).toBeGreaterThan(5);
    expect(told.tags).toHaveLength(1);
    expect(whole.tags.map(({ name }) => name)).toContain(told.tags[0]);
  });

  it('declares each of its parameters, in words', () => {
    const inPath = [...path.matchAll(/\{(\w+)\}/g)].map(([, name]) => name);
    const parameters = told.parameters ?? [];
    expect(parameters.filter((each) => each.in === 'path').map(({ name }) => name)).toEqual(inPath);
    expect(parameters.filter(({ in: where, description }) => where !== 'path' && !description)).toEqual([]);
  });

  it('declares every problem that it can answer with, and none that it cannot', () => {
    const declared = Object.keys(operation.responses).filter((status) => status >= '400');
    expect(declared.sort()).toEqual(possibleProblems(method, path, operation, told));
  });

  it('shows examples that fit: of what is asked, what is answered, and each problem', () => {
    const validator = validators(document);
    const media = [operation.requestBody, ...Object.values(operation.responses)].flatMap((each) =>
      Object.values(each?.content ?? {}),
    );
    for (const { schema = {}, examples } of media as {
      schema?: Node;
      examples?: Record<string, { value: unknown }>;
    }[]) {
      const shown = examples ? Object.values(examples).map(({ value }) => value) : exampleIn(schema);
      expect(shown.length, JSON.stringify(schema)).toBeGreaterThan(0);
      if (examples || '$ref' in schema) for (const value of shown) expect(validator(schema)(value)).toEqual([]);
    }
  });
});

/** Which operations contradict what is on record, and when. A 409 without such a case is not possible: add the case here. */
const CONFLICTS: Record<string, string> = {
  endOverride: 'a figure that has ended already',
  changeRule: 'a published rule',
  endRule: 'a published rule, or one that has ended already',
  answerSafetyNotice: 'a notice that is withdrawn, or that does not cover the item',
  withdrawSafetyNotice: 'a notice that is withdrawn already',
  changePerson: 'the last owner',
  removePerson: 'the last owner',
  leaveOrganisation: 'the last owner',
  eraseAccount: 'the last owner of an organisation',
  invitePerson: 'somebody who is here or invited already',
  revokeShareLink: 'one that was revoked already',
  renewApiKey: 'one that was revoked',
  revokeApiKey: 'one that was revoked already',
  changeFinding: 'one that has ended',
  sightFinding: 'one that was entered in error, or merged',
  takeRemedyStep: 'a step that does not lead on from where it stands',
  verifyFinding: 'one that nobody has reported done',
  mergeFinding: 'one that has ended',
  splitFinding: 'one that has ended',
  reportByLink: 'work that is reported already',
  answerByLink: 'an offer that was changed since',
  addPiece: 'a file that is kept or refused already',
  changeVisit: 'one that is completed',
  answerZone: 'a visit that is completed',
  takeReading: 'a visit that is completed',
  imposeLimitation: 'a visit that is completed',
  askSpecialist: 'a visit that is completed',
  completeVisit: 'one that is completed already',
  addAddendum: 'a visit that is still open',
  answerLimitation: 'one that is lifted already',
  reportReferral: 'one whose result is on record',
  withdrawInvitation: 'one that was withdrawn already',
  acceptInvitation: 'somebody who is here already',
};

/** Which operations look something up that their body names. */
const LOOK_UP = [
  'acceptInvitation',
  'answerByLink',
  'lookAtShared',
  'reportByLink',
  'previewInvitation',
  'switchOrganisation',
];

/** What follows from what an operation takes. Whether a GET refuses a role is its own affair: the access matrix knows. */
function possibleProblems(method: string, path: string, operation: Operation, told: Told): string[] {
  const takes = (where: string, name?: string) =>
    (told.parameters ?? []).some((each) => each.in === where && (name === undefined || each.name === name));
  const signedIn = told.security.length > 0;
  const isRead = method === 'get';
  const possible: Record<string, boolean> = {
    400: operation.requestBody !== undefined && 'application/json' in operation.requestBody.content,
    401: signedIn,
    403: signedIn && (isRead ? '403' in operation.responses : true),
    404: path.includes('{') || LOOK_UP.includes(told.operationId),
    408: operation.requestBody !== undefined,
    409: told.operationId in CONFLICTS,
    412: takes('header', 'If-Match'),
    413: operation.requestBody !== undefined,
    415: operation.requestBody !== undefined,
    422: operation.requestBody !== undefined || takes('query') || takes('header', 'Idempotency-Key'),
    429: path.startsWith('/v1/'),
    428: takes('header', 'If-Match') && told.description.includes('`If-Match` is required'),
    500: path.startsWith('/v1/'),
    503: path.startsWith('/v1/') || path === '/readyz',
  };
  return Object.keys(possible).filter((status) => possible[status]);
}

/** The schema's own example; of a list, that of its rows, as a list of one. */
function exampleIn(schema: Node): unknown[] {
  const whole = resolve(schema);
  if (whole.example !== undefined) return [whole.example];
  const { items } = (whole.properties ?? {}) as { items?: { items?: Node } };
  const row = items?.items ? resolve(items.items).example : undefined;
  return row === undefined ? [] : [{ ...rest(whole), items: [row] }];
}

/** The other parts of a page, each with something that fits. */
function rest(page: Node): Node {
  const others = Object.entries(page.properties as Record<string, Node>).filter(([name]) => name !== 'items');
  return Object.fromEntries(others.map(([name, schema]) => [name, exampleOf(schema)]));
}

function exampleOf(schema: Node): unknown {
  const { example, type, properties } = resolve(schema);
  if (example !== undefined) return example;
  if (properties)
    return Object.fromEntries(
      Object.entries(properties as Record<string, Node>).map(([name, part]) => [name, exampleOf(part)]),
    );
  if (type === 'integer') return 1;
  if (type === 'array') return [];
  return type === 'string' ? 'text' : null;
}

function resolve(schema: Node): Node {
  const name = typeof schema.$ref === 'string' ? schema.$ref.split('/').at(-1) : undefined;
  return name === undefined ? schema : (document.components.schemas[name] ?? {});
}
