/**
 * Whether everything that fits one JSON Schema also fits another, as far as the contract's schemas go. It knows the
 * keywords that they use; of two patterns it knows only whether they are the same.
 */
export type Shape = { readonly [key: string]: unknown };
export type Schemas = Readonly<Record<string, Shape>>;

/** `asked`: what a caller sends. `told`: what it is answered, where codes and properties may be added. */
export type Way = 'asked' | 'told';
export type Side = { readonly shape: Shape; readonly schemas: Schemas };

/** What fits `inner` and not `outer`, in words with the place; nothing when all does. */
export function notWithin(way: Way, inner: Side, outer: Side, place: string, seen: readonly string[] = []): string[] {
  const pair = `${inner.shape.$ref} ${outer.shape.$ref}`;
  if (inner.shape.$ref && outer.shape.$ref && seen.includes(pair)) return [];
  const known = [...seen, pair];
  const choices = choicesOf(outer);
  return choicesOf(inner).flatMap((choice) => {
    const tried = choices.map((each) => differences(way, choice, each, place, known));
    return tried.some((faults) => faults.length === 0) ? [] : (tried.toSorted((a, b) => a.length - b.length)[0] ?? []);
  });
}

function choicesOf({ shape, schemas }: Side): Side[] {
  const whole = resolve(shape, schemas);
  const choices = (whole.anyOf ?? whole.oneOf) as readonly Shape[] | undefined;
  if (choices) return choices.flatMap((each) => choicesOf({ shape: each, schemas }));
  const types = Array.isArray(whole.type) ? whole.type : [whole.type];
  return types.map((type) => ({ shape: { ...whole, type }, schemas }));
}

function resolve(shape: Shape, schemas: Schemas): Shape {
  const name = typeof shape.$ref === 'string' ? (shape.$ref.split('/').at(-1) ?? '') : undefined;
  return name === undefined ? shape : resolve(schemas[name] ?? {}, schemas);
}

function differences(way: Way, inner: Side, outer: Side, place: string, seen: readonly string[]): string[] {
  const [a, b] = [inner.shape, outer.shape];
  if (b.type !== undefined && a.type !== b.type && !(a.type === 'integer' && b.type === 'number'))
    return [`${place}: ${a.type ?? 'anything'} in place of ${b.type}`];
  const into = (key: string, name: string) =>
    a[key] && b[key]
      ? notWithin(way, at(inner, a[key] as Shape), at(outer, b[key] as Shape), `${place}${name}`, seen)
      : [];
  return [
    ...values(way, a, b, place),
    ...parts(way, inner, outer, place, seen),
    ...into('items', '/*'),
    ...into('additionalProperties', '/*'),
  ];
}

const at = ({ schemas }: Side, shape: Shape): Side => ({ shape, schemas });

/** Lower bounds and upper ones. */
const BOUNDS = {
  least: ['minimum', 'exclusiveMinimum', 'minLength', 'minItems'],
  most: ['maximum', 'exclusiveMaximum', 'maxLength', 'maxItems'],
};

function values(way: Way, a: Shape, b: Shape, place: string): string[] {
  const codes = (shape: Shape) =>
    (shape.enum ?? ('const' in shape ? [shape.const] : undefined)) as readonly unknown[] | undefined;
  const [has, may] = [codes(a), codes(b)];
  const strange =
    way === 'told' || may === undefined ? [] : (has ?? ['any value']).filter((code) => !may.includes(code));
  const beyond = [
    ...BOUNDS.least.filter((key) => b[key] !== undefined && Number(a[key] ?? -Infinity) < Number(b[key])),
    ...BOUNDS.most.filter((key) => b[key] !== undefined && Number(a[key] ?? Infinity) > Number(b[key])),
    ...['pattern', 'format'].filter((key) => b[key] !== undefined && a[key] !== b[key]),
  ];
  return [
    ...strange.map((code) => `${place}: ${code} is no longer taken`),
    ...beyond.map((key) => `${place}: ${key} ${a[key] ?? 'none'} in place of ${b[key]}`),
  ];
}

function parts(way: Way, inner: Side, outer: Side, place: string, seen: readonly string[]): string[] {
  const [a, b] = [inner, outer].map(({ shape }) => (shape.properties ?? {}) as Schemas);
  if (!a || !b) return [];
  const required = (side: Side) => (side.shape.required ?? []) as readonly string[];
  const absent = required(outer).filter((name) => !required(inner).includes(name));
  const unknown =
    way === 'asked' && outer.shape.additionalProperties === false ? Object.keys(a).filter((name) => !(name in b)) : [];
  const untold = way === 'told' ? Object.keys(b).filter((name) => !(name in a) && !absent.includes(name)) : [];
  const both = Object.entries(a).flatMap(([name, shape]) => (b[name] ? [[name, shape, b[name]] as const] : []));
  return [
    ...absent.map((name) => `${place}/${name}: ${way === 'asked' ? 'now required' : 'no longer always there'}`),
    ...unknown.map((name) => `${place}/${name}: no longer taken`),
    ...untold.map((name) => `${place}/${name}: no longer told`),
    ...both.flatMap(([name, one, other]) => notWithin(way, at(inner, one), at(outer, other), `${place}/${name}`, seen)),
  ];
}
