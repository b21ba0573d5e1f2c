/**
 * A body that is not what was asked for, sent to every operation that takes one. The cases are made from the served
 * document, so a new operation is held to them too: give its request schema an example, and its path's parameters
 * things in support/operations.ts.
 */
import type { Problem } from '@garboard/contract/problem.ts';
import { beforeAll, describe, expect, it } from 'vitest';
import { app, type Client, type Headed, signedInPerson, type Told, tell } from '../support/api.ts';
import { type BadBody, massAssigned, mistyped, repeated, requiredOf, unknown } from '../support/bad-bodies.ts';
import { everythingOf } from '../support/everything-of.ts';
import {
  addressOf,
  bodySchema,
  exampleOf,
  isForPersons,
  named,
  shapeOfExample,
  type Things,
  thingsOf,
  WITH_BODY,
} from '../support/operations.ts';

const JSON_UTF8: Headed = { 'content-type': 'application/json' };

it('is asked of every operation that reads a body', () => {
  expect(WITH_BODY.length).toBeGreaterThan(10);
});

describe.each(named(WITH_BODY))('%s', (_, asked) => {
  const { method, path, operation } = asked;
  const shape = shapeOfExample(operation);
  const example = exampleOf(operation) as Record<string, unknown>;
  const text = JSON.stringify(example);
  let owner: Client;
  let things: Things;
  let credential: Headed;

  beforeAll(async () => {
    const person = await signedInPerson();
    owner = person;
    things = await thingsOf(owner, undefined, asked);
    credential = isForPersons(operation)
      ? { cookie: person.cookie, 'sec-fetch-site': 'same-origin' }
      : { authorization: `Bearer ${await owner.organisation.key()}` };
  });

  function send(body: string, headers: Headed = {}): Promise<Told<Problem>> {
    return tell<Problem>(
      app.request,
      method,
      addressOf(path, things),
      { ...credential, 'if-match': '"1"', ...JSON_UTF8, ...headers },
      body,
    );
  }

  /** Refused for that reason, at those places if it has any, and nothing is written. */
  async function refuses(type: string, { text, pointers }: BadBody, headers?: Headed): Promise<Told<Problem>> {
    const before = await everythingOf(owner.organisation.id);
    const told = await send(text, headers);
    expect([told.status, told.body.type], told.text).toEqual([STATUS[type], `/problems/${type}`]);
    const places = told.body.errors?.map(({ pointer }) => pointer) ?? [];
    expect([...new Set(places)].sort()).toEqual([...pointers].sort());
    expect(await everythingOf(owner.organisation.id)).toEqual(before);
    return told;
  }

  it.each([
    ['empty', ''],
    ['cut short', text.slice(0, -1)],
    ['no JSON', 'name=Teal'],
    ['two documents', text + text],
    ['not a number of JSON', '{"a":01}'],
    ['JSON with a comment', text.replace('{', '{/* hers */')],
    ['nested one level too deeply', `{"a":${'['.repeat(32)}${']'.repeat(32)}}`],
    ['nested far too deeply', `{"a":${'['.repeat(100_000)}${']'.repeat(100_000)}}`],
  ])('refuses a body that is %s', async (_, body) => {
    await refuses('malformed-json', { text: body, pointers: [] });
  });

  it('refuses what is not UTF-8', async () => {
    const body = Buffer.from(text.replace('"', '"\xff'), 'latin1');
    const headers = { ...credential, 'if-match': '"1"', ...JSON_UTF8 };
    const before = await everythingOf(owner.organisation.id);
    const response = await app.request(addressOf(path, things), { method, headers, body });

    expect([response.status, (await response.json()).type]).toEqual([400, '/problems/malformed-json']);
    expect(await everythingOf(owner.organisation.id)).toEqual(before);
  });

  it.each<[string, Headed]>([
    ['another alphabet', { 'content-type': 'application/json; charset=iso-8859-1' }],
    ['a form', { 'content-type': 'application/x-www-form-urlencoded' }],
    ['something packed', { 'content-encoding': 'gzip' }],
  ])('refuses a body that says it is %s', async (_, headers) => {
    await refuses('unsupported-media-type', { text, pointers: [] }, headers);
  });

  it('refuses a body that is larger than it says it takes', async () => {
    const { description = '' } = operation.requestBody as { description?: string };
    const kilobytes = Number(/at most (\d+) kB/.exec(description)?.[1]);

    await refuses('too-large', { text: `${text}${' '.repeat(kilobytes * 1024)}`, pointers: [] });
  });

  it('reads one that is nested as deeply as may be', async () => {
    const body = `{"a":${'['.repeat(31)}${']'.repeat(31)}}`;

    expect((await send(body)).status).toBe(422);
  });

  it.each(['[]', '"text"', 'null', '7', '1e999', 'true'])('refuses %s in place of an object', async (body) => {
    await refuses('invalid', { text: body, pointers: [''] });
  });

  it('refuses a name that stands twice', async () => {
    await refuses('invalid', repeated(example));
  });

  it('refuses a property that nobody knows, wherever it stands, and names every place', async () => {
    const { value, pointers } = unknown(example);

    const { body } = await send(JSON.stringify(value));

    expect(body.type).toBe('/problems/invalid');
    expect(body.errors?.map(({ pointer }) => pointer).sort()).toEqual(pointers.sort());
  });

  it('refuses every property that only the API sets', async () => {
    await refuses('invalid', massAssigned(shape, example));
  });

  it.each(mistyped(shape, example))('refuses a value of the wrong kind, in every place at once: %s', async (_, bad) => {
    await refuses('invalid', bad);
  });

  it('names everything that is missing', async () => {
    const isChoice = bodySchema(operation)?.oneOf !== undefined;
    const pointers = isChoice ? ['/step'] : requiredOf(shape).map((name) => `/${name}`);
    if (pointers.length > 0) await refuses('invalid', { text: '{}', pointers });
    else expect((await send('{}')).status).toBeLessThan(300);
  });
});

const STATUS: Readonly<Record<string, number>> = {
  'malformed-json': 400,
  'too-large': 413,
  'unsupported-media-type': 415,
  invalid: 422,
};
