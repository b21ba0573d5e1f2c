/** Which changes break a program is common practice; no standard lists them. */
import { describe, expect, it } from 'vitest';
import { breakingChanges } from './breaking-changes.ts';

type Node = { [key: string]: Node };

const listed = { type: 'string', enum: ['sloop', 'ketch'] };
const BEFORE = {
  paths: {
    '/v1/boats': {
      get: {
        operationId: 'listBoats',
        security: [{ key: [] }, { cookie: [] }],
        parameters: [{ name: 'limit', in: 'query', schema: { type: 'integer', minimum: 1, maximum: 200 } }],
        responses: {
          200: {
            headers: { Link: {} },
            content: {
              'application/json': {
                schema: {
                  type: 'object',
                  properties: { items: { type: 'array', items: ref('Boat') } },
                  required: ['items'],
                },
              },
            },
          },
        },
      },
      post: {
        operationId: 'addBoat',
        requestBody: { content: { 'application/json': { schema: ref('NewBoat') } } },
        responses: { 201: { content: { 'application/json': { schema: ref('Boat') } } } },
      },
    },
  },
  components: {
    schemas: {
      Boat: {
        type: 'object',
        properties: {
          id: { type: 'string' },
          rig: listed,
          length: { anyOf: [{ type: 'number' }, { type: 'null' }] },
          tender: ref('Boat'),
        },
        required: ['id', 'rig'],
      },
      NewBoat: {
        type: 'object',
        properties: { name: { type: 'string', maxLength: 80 }, rig: listed },
        required: ['name'],
        additionalProperties: false,
      },
    },
  },
};

function ref(name: string) {
  return { $ref: `#/components/schemas/${name}` };
}

const get = (document: Node) => there(document.paths?.['/v1/boats']?.get);
const post = (document: Node) => there(document.paths?.['/v1/boats']?.post);
const boat = (document: Node) => there(document.components?.schemas?.Boat);
const asked = (document: Node) => there(document.components?.schemas?.NewBoat);

function there(node: Node | undefined): Node {
  if (!node) throw new Error('no such place');
  return node;
}

type Change = readonly [string, (document: Node) => unknown];
const after = (change: Change[1]) => {
  const document = structuredClone(BEFORE) as never;
  change(document);
  return breakingChanges(BEFORE as never, document);
};

describe('a program trips over', () => {
  it.each<[...Change, string]>([
    ['an operation that is gone', ({ paths }) => delete paths?.['/v1/boats']?.post, 'POST /v1/boats: is gone'],
    [
      'an operation with another name',
      (d) => Object.assign(get(d), { operationId: 'readBoats' }),
      'is now called readBoats',
    ],
    [
      'a credential that is taken no more',
      (d) => Object.assign(get(d), { security: [{ key: [] }] }),
      'credential cookie',
    ],
    ['a parameter that is gone', (d) => Object.assign(get(d), { parameters: [] }), '?limit: no longer taken'],
    [
      'a parameter that is now required',
      (d) => Object.assign(there(get(d).parameters?.['0']), { required: true }),
      '?limit: now required',
    ],
    [
      'a narrower parameter',
      (d) => Object.assign(there(get(d).parameters?.['0']?.schema), { maximum: 100 }),
      'maximum 200 in place of 100',
    ],
    [
      'a new property that must be sent',
      (d) => Object.assign(asked(d), { required: ['name', 'rig'] }),
      'asks /rig: now required',
    ],
    ['a property that is taken no more', (d) => delete asked(d).properties?.rig, 'asks /rig: no longer taken'],
    [
      'a code that is taken no more',
      (d) => Object.assign(there(asked(d).properties?.rig), { enum: ['sloop'] }),
      'asks /rig: ketch is no longer taken',
    ],
    [
      'a shorter text',
      (d) => Object.assign(there(asked(d).properties?.name), { maxLength: 40 }),
      'asks /name: maxLength 80 in place of 40',
    ],
    ['a pattern', (d) => Object.assign(there(asked(d).properties?.name), { pattern: '^A' }), 'asks /name: pattern'],
    ['a success that is gone', (d) => delete post(d).responses?.['201'], 'POST /v1/boats 201: is gone'],
    [
      'a header that is told no more',
      (d) => delete get(d).responses?.['200']?.headers?.Link,
      '200 Link: no longer told',
    ],
    ['a property that is told no more', (d) => delete boat(d).properties?.length, '/length: no longer told'],
    [
      'a property that is not always there',
      (d) => Object.assign(boat(d), { required: ['id'] }),
      '/rig: no longer always there',
    ],
    [
      'another type',
      (d) => Object.assign(there(boat(d).properties?.id), { type: 'integer' }),
      '/id: integer in place of string',
    ],
    [
      'a null where none was',
      (d) => Object.assign(there(boat(d).properties?.id), { type: ['string', 'null'] }),
      '/id: null in place of string',
    ],
  ])('%s', (_, change, words) => {
    const found = after(change);

    expect(found.length).toBeGreaterThan(0);
    for (const each of found) expect(each).toContain(words);
  });
});

describe('a program does not notice', () => {
  it.each<Change>([
    ['nothing', () => undefined],
    ['a new operation', ({ paths }) => Object.assign(there(paths), { '/v1/yards': { get: {} } })],
    [
      'a new parameter',
      (d) => (get(d).parameters as unknown as object[]).push({ name: 'rig', in: 'query', schema: {} }),
    ],
    ['a new property that may be sent', (d) => Object.assign(there(asked(d).properties), { note: {} })],
    ['a longer text', (d) => Object.assign(there(asked(d).properties?.name), { maxLength: 90 })],
    ['a new property that is told', (d) => Object.assign(there(boat(d).properties), { note: { type: 'string' } })],
    [
      'a new code that is told',
      (d) => Object.assign(there(boat(d).properties?.rig), { enum: ['sloop', 'ketch', 'yawl'] }),
    ],
    ['a null that comes no more', (d) => Object.assign(there(boat(d).properties), { length: { type: 'number' } })],
    ['a new refusal', (d) => Object.assign(there(post(d).responses), { 409: {} })],
  ])('%s', (_, change) => {
    expect(after(change)).toEqual([]);
  });
});
