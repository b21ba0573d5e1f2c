/** What can be wrong with a body, made from the shape that the document asks for and its own example. */
import { document } from './api.ts';
import { onlyWord, resolve, type Schema } from './operations.ts';

type Json = Readonly<Record<string, unknown>>;
/** A body that fits its shape but for the places that are named. */
export type BadBody = { readonly text: string; readonly pointers: readonly string[] };

const KINDS: Readonly<Record<string, unknown>> = {
  string: '\u{1F6A4}',
  number: -0.125,
  boolean: true,
  null: null,
  array: [],
  object: {},
};

const propertiesOf = (shape: Schema) => Object.entries((shape.properties ?? {}) as Record<string, Schema>);
export const requiredOf = (shape: Schema) => (shape.required ?? []) as readonly string[];
const sorted = (places: readonly string[]) => [...places].sort();

/** Every property at once holds the kind of value that it cannot be: one body for each kind. */
export function mistyped(shape: Schema, example: Json): [string, BadBody][] {
  return Object.entries(KINDS).flatMap(([kind, value]) => {
    const names = propertiesOf(shape)
      // What says which shape it is: with another word there the rest is of no known shape.
      .filter(([, property]) => onlyWord(property) === undefined && !kindsOf(property).has(kind))
      .map(([name]) => name);
    const text = JSON.stringify({ ...example, ...Object.fromEntries(names.map((name) => [name, value])) });
    return names.length === 0 ? [] : [[kind, { text, pointers: sorted(names.map((name) => `/${name}`)) }]];
  });
}

/** Which kinds of JSON value a shape can be. */
function kindsOf(shape: Schema): ReadonlySet<string> {
  const whole = resolve(shape);
  const inner = ['anyOf', 'oneOf', 'allOf'].flatMap((key) => (whole[key] ?? []) as readonly Schema[]);
  const values = [...((whole.enum ?? []) as readonly unknown[]), ...('const' in whole ? [whole.const] : [])];
  const kinds = [whole.type ?? []].flat().map((type) => (type === 'integer' ? 'number' : String(type)));
  return new Set([...kinds, ...values.map((value) => typeof value), ...inner.flatMap((each) => [...kindsOf(each)])]);
}

/** What the API alone says of a thing, anywhere in its answers, sent as though it could be set. */
export function massAssigned(shape: Schema, example: Json): BadBody {
  const asked = new Set(propertiesOf(shape).map(([name]) => name));
  const told = Object.values(document.components.schemas).flatMap((each) => propertiesOf(each).map(([name]) => name));
  const all = new Set([...told, 'organisationId', 'organisation_id', '__proto__', 'constructor']);
  const names = [...all].filter((name) => !asked.has(name));
  const extra = names.map((name) => `${JSON.stringify(name)}:"mine"`).join(',');
  return {
    text: `${JSON.stringify(example).slice(0, -1)}${Object.keys(example).length > 0 ? ',' : ''}${extra}}`,
    pointers: sorted(names.map((name) => `/${name}`)),
  };
}

/** The same name twice, with the same value: even that is refused. */
export function repeated(example: Json): BadBody {
  const [name, value] = Object.entries(example)[0] ?? [];
  const again = `${JSON.stringify(name)}:${JSON.stringify(value)}`;
  return { text: `${JSON.stringify(example).slice(0, -1)},${again}}`, pointers: [`/${name}`] };
}

/** A property that nobody knows, in every object of the example. */
export function unknown(example: unknown, pointer = ''): { value: unknown; pointers: string[] } {
  if (typeof example !== 'object' || example === null) return { value: example, pointers: [] };
  const inner = Object.entries(example).map(([key, value]) => [key, unknown(value, `${pointer}/${key}`)] as const);
  const pointers = inner.flatMap(([, each]) => each.pointers);
  if (Array.isArray(example)) return { value: inner.map(([, { value }]) => value), pointers };
  const value = { ...Object.fromEntries(inner.map(([key, each]) => [key, each.value])), 'not/a~part': 1 };
  return { value, pointers: [...pointers, `${pointer}/not~1a~0part`] };
}
