/** What a program written for one document would trip over with a newer one. */
import { notWithin, type Schemas, type Shape } from './shape-within.ts';

type Parameter = { readonly name: string; readonly in: string; readonly required?: boolean; readonly schema: Shape };
type Content = Readonly<Record<string, { readonly schema?: Shape }>>;
type Answer = { readonly content?: Content; readonly headers?: Shape };
type Operation = {
  readonly operationId: string;
  readonly parameters?: readonly Parameter[];
  readonly requestBody?: { readonly content: Content };
  readonly responses: Readonly<Record<string, Answer>>;
  readonly security?: readonly Shape[];
};
export type OpenApi = {
  readonly paths: Readonly<Record<string, Readonly<Record<string, Operation>>>>;
  readonly components: { readonly schemas: Schemas };
};

/** Each in words with its place; nothing when whoever could use `before` can use `after`. */
export function breakingChanges(before: OpenApi, after: OpenApi): string[] {
  return Object.entries(before.paths).flatMap(([path, methods]) =>
    Object.entries(methods).flatMap(([method, operation]) => {
      const place = `${method.toUpperCase()} ${path}`;
      const now = after.paths[path]?.[method];
      return now ? changed(place, before, operation, after, now) : [`${place}: is gone`];
    }),
  );
}

function changed(place: string, before: OpenApi, was: Operation, after: OpenApi, is: Operation): string[] {
  const schemas = [before.components.schemas, after.components.schemas] as const;
  return [
    ...(was.operationId === is.operationId ? [] : [`${place}: ${was.operationId} is now called ${is.operationId}`]),
    ...credentials(place, was, is),
    ...parameters(place, schemas, was, is),
    ...bodies(place, schemas, was, is),
    ...answers(place, schemas, was, is),
  ];
}

function credentials(place: string, was: Operation, is: Operation): string[] {
  const kinds = ({ security = [] }: Operation) => (security.length === 0 ? ['none'] : security.flatMap(Object.keys));
  return kinds(was)
    .filter((kind) => !kinds(is).includes(kind) && !kinds(is).includes('none'))
    .map((kind) => `${place}: credential ${kind} is no longer taken`);
}

type Pair = readonly [Schemas, Schemas];

function parameters(place: string, [old, now]: Pair, was: Operation, is: Operation): string[] {
  const same = (a: Parameter) => (b: Parameter) => a.in === b.in && a.name === b.name;
  const gone = (was.parameters ?? []).flatMap((each) => {
    const at = `${place} ?${each.name}`;
    const after = is.parameters?.find(same(each));
    if (!after) return [`${at}: no longer taken`];
    return notWithin('asked', { shape: each.schema, schemas: old }, { shape: after.schema, schemas: now }, at);
  });
  const required = (is.parameters ?? []).filter((each) => each.required && !was.parameters?.find(same(each))?.required);
  return [...gone, ...required.map(({ name }) => `${place} ?${name}: now required`)];
}

function bodies(place: string, [old, now]: Pair, was: Operation, is: Operation): string[] {
  if (!was.requestBody) return is.requestBody ? [`${place}: now asks for a body`] : [];
  return Object.entries(was.requestBody.content).flatMap(([type, { schema = {} }]) => {
    const after = is.requestBody?.content[type];
    if (!after) return [`${place}: ${type} is no longer taken`];
    return notWithin(
      'asked',
      { shape: schema, schemas: old },
      { shape: after.schema ?? {}, schemas: now },
      `${place} asks `,
    );
  });
}

/** Refusals are one shape and may come and go; success is what a program waits for. */
function answers(place: string, [old, now]: Pair, was: Operation, is: Operation): string[] {
  return Object.entries(was.responses)
    .filter(([status]) => status < '300')
    .flatMap(([status, { content = {}, headers = {} }]) => {
      const at = `${place} ${status}`;
      const after = is.responses[status];
      if (!after) return [`${at}: is gone`];
      const lost = Object.keys(headers).filter((name) => !(name in (after.headers ?? {})));
      return [
        ...lost.map((name) => `${at} ${name}: no longer told`),
        ...Object.entries(content).flatMap(([type, { schema = {} }]) => {
          const told = after.content?.[type];
          if (!told) return [`${at}: ${type} is gone`];
          return notWithin(
            'told',
            { shape: told.schema ?? {}, schemas: now },
            { shape: schema, schemas: old },
            `${at} `,
          );
        }),
      ];
    });
}
