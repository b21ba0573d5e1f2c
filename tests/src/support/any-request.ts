/** Requests made from an operation's declaration: most of them fit, some do not, and each says which. */
import { type Validate, validators } from '@garboard/api/openapi/conforms.test-support.ts';
import fc from 'fast-check';
import { document } from './api.ts';
import { type Asked, addressOf, bodyOf, bodySchema, contentTypeOf, type Schema, type Things } from './operations.ts';
import { fitting, JUNK_TEXT, spoiled } from './schema-arbitrary.ts';

export type AnyRequest = {
  readonly path: string;
  readonly headers: Readonly<Record<string, string>>;
  readonly body?: string;
  /** Why it cannot be accepted, whatever is on record; empty when it may be. */
  readonly wrong: readonly string[];
};

type Parameter = { readonly name: string; readonly in: string; readonly schema: Schema };

const validator = validators(document);

export function anyRequest(asked: Asked, things: Things): fc.Arbitrary<AnyRequest> {
  const { path, operation } = asked;
  const parameters = (operation as { parameters?: readonly Parameter[] }).parameters ?? [];
  const known = Object.values(things).filter((thing) => /^[0-9a-f-]{36}$/.test(thing));
  return fc
    .record({
      address: anyAddress(path, things),
      query: anyQuery(parameters, known),
      headers: anyHeaders(parameters),
      body: anyBody(asked, things, known),
    })
    .map(({ address, query, headers, body }) => ({
      path: `${address}${query.text}`,
      headers: { ...headers, ...(body && { 'content-type': contentTypeOf(asked.operation) ?? '' }) },
      ...(body && { body: body.text }),
      wrong: [...query.wrong, ...(body?.wrong ?? [])],
    }));
}

/** Nearly always that of a real thing. */
function anyAddress(path: string, things: Things): fc.Arbitrary<string> {
  const others = fc.record(
    Object.fromEntries(Object.keys(things).map((name) => [name, fc.oneof(fc.uuid(), pathText)])),
  );
  return fc.oneof(
    { weight: 9, arbitrary: fc.constant(addressOf(path, things)) },
    { weight: 1, arbitrary: others.map((made) => addressOf(path, made as Things)) },
  );
}

const pathText = fc.string({ minLength: 1, maxLength: 40 }).map((text) => `x${encodeURIComponent(text)}`);

type Query = { readonly text: string; readonly wrong: readonly string[] };

function anyQuery(parameters: readonly Parameter[], known: readonly string[]): fc.Arbitrary<Query> {
  const model = Object.fromEntries(
    parameters
      .filter((each) => each.in === 'query')
      .map(({ name, schema }) => [
        name,
        fc.oneof({ weight: 4, arbitrary: fitting(schema, known).map(String) }, { weight: 1, arbitrary: JUNK_TEXT }),
      ]),
  );
  if (Object.keys(model).length === 0) return fc.constant({ text: '', wrong: [] });
  const strange = fc.oneof(
    { weight: 9, arbitrary: fc.constant({}) },
    { weight: 1, arbitrary: fc.constant({ nonsense: '1' }) },
  );
  const few = fc.subarray(Object.keys(model), { maxLength: Math.min(2, Object.keys(model).length) });
  return fc.tuple(fc.record(model), few, strange).map(([all, names, extra]) => {
    const asked = Object.fromEntries(names.map((name) => [name, String(all[name]).toWellFormed()]));
    const text = new URLSearchParams({ ...asked, ...extra }).toString();
    return { text: text && `?${text}`, wrong: 'nonsense' in extra ? ['a parameter that nobody knows'] : [] };
  });
}

/** A header is a text of ASCII without breaks: nothing else can be sent. */
const headerText = JUNK_TEXT.map((text) => text.replaceAll(/[^\x20-\x7e]/g, '').trim());

function anyHeaders(parameters: readonly Parameter[]): fc.Arbitrary<Record<string, string>> {
  const takes = (name: string) => parameters.some((each) => each.in === 'header' && each.name === name);
  const version = fc.oneof(
    { weight: 8, arbitrary: fc.constantFrom('"1"', '"2"', '"7"') },
    { weight: 1, arbitrary: headerText },
  );
  const model = {
    ...(takes('If-Match') && { 'if-match': version }),
    ...(takes('Idempotency-Key') && { 'idempotency-key': fc.oneof(fc.uuid(), fc.constantFrom('a', 'b'), headerText) }),
    'if-none-match': fc.constantFrom('*', '"1"', 'W/"1", "2"', ''),
  };
  return fc.record(model, { requiredKeys: [] }) as fc.Arbitrary<Record<string, string>>;
}

type Body = { readonly text: string; readonly wrong: readonly string[] };

function anyBody(asked: Asked, things: Things, known: readonly string[]): fc.Arbitrary<Body | undefined> {
  const schema = bodySchema(asked.operation);
  const example = bodyOf(asked, things);
  if (contentTypeOf(asked.operation) && !schema) return fc.string().map((text) => ({ text, wrong: [] }));
  if (!schema) return fc.constant(undefined);
  const fits = fc.oneof(fc.constant(example), mixed(schema, example, known), fitting(schema, known));
  const validate = validator(schema);
  const values = fc.oneof({ weight: 2, arbitrary: fits }, { weight: 1, arbitrary: spoiled(fits) });
  const torn = fc.tuple(fits, fc.nat(), fc.string({ maxLength: 2 })).map(([value, at, text]) => tear(value, at, text));
  return fc.oneof(
    {
      weight: 19,
      arbitrary: values.map((value) => ({ text: JSON.stringify(value), wrong: faultsOf(validate, value) })),
    },
    { weight: 1, arbitrary: torn.map((text) => ({ text, wrong: [] })) },
  );
}

/** The example with some parts of its own and some that were made: it often passes the schema's finer rules too. */
function mixed(schema: Schema, example: unknown, known: readonly string[]): fc.Arbitrary<unknown> {
  const parts = Object.entries((schema.properties ?? {}) as Record<string, Schema>);
  const model = Object.fromEntries(parts.map(([name, part]) => [name, fitting(part, known)]));
  return fc.record(model, { requiredKeys: [] }).map((made) => {
    const some = Object.entries(made).slice(0, 2);
    return { ...(example as object), ...Object.fromEntries(some) };
  });
}

/** White space around a text is taken off before it is measured: the schema does not know that. */
const faultsOf = (validate: Validate, value: unknown): string[] => validate(trimmed(JSON.parse(JSON.stringify(value))));

function trimmed(value: unknown): unknown {
  if (typeof value === 'string') return value.trim();
  if (typeof value !== 'object' || value === null) return value;
  if (Array.isArray(value)) return value.map(trimmed);
  return Object.fromEntries(Object.entries(value).map(([name, inner]) => [name, trimmed(inner)]));
}

/** A text of JSON with something else in one place. */
function tear(value: unknown, at: number, text: string): string {
  const whole = JSON.stringify(value);
  const place = at % (whole.length + 1);
  return `${whole.slice(0, place)}${text}${whole.slice(place + 1)}`;
}
