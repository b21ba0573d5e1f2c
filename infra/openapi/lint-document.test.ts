import { expect, it } from 'vitest';
import { lintDocument } from './lint-document.ts';
import { OUR_RULES } from './ruleset.ts';
import { servedDocument } from './served-document.ts';

type Node = { [key: string]: Node };
const text = await servedDocument();

/** One fault for each rule of our own: what the linter must catch before its silence means anything. */
const PLANTED: Record<string, (document: Node) => void> = {
  'operation-id-verb-first': ({ paths }) => set(paths?.['/v1/vessels']?.get, { operationId: 'Vessels' }),
  'path-kebab-case': ({ paths }) => set(paths, { '/v1/itemKinds': {} }),
  'property-camel-case': ({ components }) => set(components?.schemas?.Session?.properties, { Due_Date: {} }),
  'parameter-camel-case': ({ paths }) =>
    addParameter(paths?.['/v1/due'], { name: 'as-of', in: 'query', description: 'x' }),
  'parameter-told': ({ paths }) => addParameter(paths?.['/v1/due'], { name: 'mute', in: 'query' }),
  'request-example': ({ components }) => drop(components?.schemas?.NewVessel, 'example'),
  'object-at-top': ({ components }) => set(components?.schemas?.Session, { type: 'array' }),
  'problem-for-every-refusal': ({ paths }) => drop(paths?.['/v1/rules']?.get?.responses?.[401], 'content'),
  'write-guarded': ({ paths }) => drop(paths?.['/v1/session/end']?.post?.responses, '403'),
  'post-repeatable': ({ paths }) => set(paths?.['/v1/vessels']?.post, { parameters: [] }),
  'change-versioned': ({ paths }) => drop(paths?.['/v1/items/{itemId}']?.patch?.responses, '428'),
  'list-paged': ({ paths }) => set(paths?.['/v1/schemes']?.get, { parameters: [] }),
  'no-unknown-parts': ({ components }) => drop(components?.schemas?.NewItem, 'additionalProperties'),
};

const set = (node: Node | undefined, parts: object) => Object.assign(there(node), parts);
const drop = (node: Node | undefined, part: string) => delete there(node)[part];
const addParameter = (path: Node | undefined, parameter: object) =>
  (there(path?.get?.parameters) as unknown as object[]).push(parameter);

function there(node: Node | undefined): Node {
  if (!node) throw new Error('the document has no such place to plant a fault in');
  return node;
}

it('the served document keeps every rule of the linter, ours included', async () => {
  expect(await lintDocument(text)).toEqual([]);
});

it('a fault against each of our own rules is seen', async () => {
  const document = JSON.parse(text);
  for (const plant of Object.values(PLANTED)) plant(document);

  const found = await lintDocument(JSON.stringify(document));

  const codes = new Set(found.map((words) => words.split(':')[0]));
  const ours = Object.keys(OUR_RULES);
  expect(ours.filter((rule) => !codes.has(rule))).toEqual([]);
  expect(Object.keys(PLANTED).sort()).toEqual([...ours].sort());
});
