/** Whether an answer is what the served document promises: its status, its media type, its body to the last property. */
import { Ajv2020, type ValidateFunction } from 'ajv/dist/2020.js';
import formats from 'ajv-formats';

type Schema = { readonly [key: string]: unknown };
type Media = { readonly schema?: Schema };
export type Operation = {
  readonly operationId: string;
  readonly 'x-reads-only'?: true;
  readonly security?: readonly Schema[];
  readonly requestBody?: { readonly content: Readonly<Record<string, Media>> };
  readonly responses: Readonly<Record<string, { readonly content?: Readonly<Record<string, Media>> }>>;
};
export type OpenApi = {
  readonly tags: readonly { readonly name: string }[];
  readonly paths: Readonly<Record<string, Readonly<Record<string, Operation>>>>;
  readonly components: { readonly schemas: Readonly<Record<string, Schema>> };
};

export type Answer = { readonly status: number; readonly contentType: string | null; readonly body: unknown };

/** What is wrong with an answer, in words; empty when it conforms. */
export function conformance(document: OpenApi): (method: string, path: string, answer: Answer) => string[] {
  const validator = validators(document);
  return (method, path, { status, contentType, body }) => {
    const operation = findOperation(document, method, path);
    if (!operation) return status < 400 ? ['answers although the document has no such operation'] : [];
    const declared = operation.responses[status];
    if (!declared) return [`${operation.operationId} does not declare ${status}`];
    if (!declared.content) return body === undefined ? [] : [`${operation.operationId} declares no body for ${status}`];
    const schema = declared.content[contentType ?? '']?.schema;
    if (!schema) return [`${operation.operationId} does not declare ${contentType} for ${status}`];
    return validator(schema)(body).map((words) => `${operation.operationId} ${status} ${words}`);
  };
}

function findOperation(document: OpenApi, method: string, path: string): Operation | undefined {
  const templates = Object.keys(document.paths).filter((each) => matches(each, path));
  // A path of words goes before one with a parameter in the same place.
  const template = templates.toSorted((a, b) => a.split('{').length - b.split('{').length)[0];
  return template === undefined ? undefined : document.paths[template]?.[method.toLowerCase()];
}

function matches(template: string, path: string): boolean {
  return new RegExp(`^${template.replaceAll('.', '[.]').replaceAll(/\{\w+\}/g, '[^/]+')}$`).test(path);
}

export type Validate = (value: unknown) => string[];

/** Reads a schema of the document strictly: a property that it does not name is a fault. Each fault in words. */
export function validators({ components }: OpenApi): (schema: Schema) => Validate {
  const ajv = formats.default(new Ajv2020({ strict: false, allErrors: true }));
  const $defs = closed(components.schemas) as Schema;
  const known = new Map<Schema, Validate>();
  return (schema) => {
    const validate = known.get(schema) ?? inWords(ajv.compile({ ...(closed(schema) as Schema), $defs }));
    known.set(schema, validate);
    return validate;
  };
}

const inWords =
  (validate: ValidateFunction): Validate =>
  (value) =>
    validate(value)
      ? []
      : (validate.errors ?? []).map(({ instancePath, message }) => `${instancePath || '/'} ${message}`);

function closed(node: unknown): unknown {
  if (Array.isArray(node)) return node.map(closed);
  if (typeof node !== 'object' || node === null) return node;
  const entries = Object.entries(node).filter(([key]) => key !== 'example');
  const copy = Object.fromEntries(
    entries.map(([key, value]) => [key, key === '$ref' ? local(String(value)) : closed(value)]),
  );
  return copy.type === 'object' && copy.properties ? { additionalProperties: false, ...copy } : copy;
}

const local = (reference: string) => reference.replace('#/components/schemas/', '#/$defs/');
