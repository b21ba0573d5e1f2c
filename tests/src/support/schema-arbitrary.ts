/** Values made from the document's schemas: such as fit, and such as were spoiled somewhere. */
import fc from 'fast-check';
import { resolve, type Schema } from './operations.ts';

type Any = fc.Arbitrary<unknown>;

const MOST_ENTRIES = 3;
const MOST_CHARACTERS = 60;

/** Values that fit the schema, as far as a schema says it; `known` are ids of real things. */
export function fitting(schema: Schema, known: readonly string[]): Any {
  const whole = resolve(schema);
  const choices = (whole.anyOf ?? whole.oneOf) as readonly Schema[] | undefined;
  if (choices) return fc.oneof(...choices.map((each) => fitting(each, known)));
  if (Array.isArray(whole.type)) return fc.oneof(...whole.type.map((type) => fitting({ ...whole, type }, known)));
  if (whole.enum) return fc.constantFrom(...(whole.enum as readonly unknown[]));
  if ('const' in whole) return fc.constant(whole.const);
  switch (whole.type) {
    case 'string':
      return text(whole, known);
    case 'integer':
      return fc.integer(within(whole, -1_000_000, 1_000_000));
    case 'number':
      return fc.double({ ...within(whole, -1e9, 1e9), noNaN: true });
    case 'boolean':
      return fc.boolean();
    case 'null':
      return fc.constant(null);
    case 'array':
      return list(whole, known);
    case 'object':
      return object(whole, known);
    default:
      return fc.jsonValue();
  }
}

function within(schema: Schema, least: number, most: number): { min: number; max: number } {
  const number = (key: string) => (typeof schema[key] === 'number' ? schema[key] : undefined);
  const above = number('exclusiveMinimum');
  const min = Math.max(number('minimum') ?? (above === undefined ? least : above + 1e-3), -Number.MAX_SAFE_INTEGER);
  return { min, max: Math.max(min, Math.min(number('maximum') ?? most, most)) };
}

function text(schema: Schema, known: readonly string[]): Any {
  const shown: Any[] = typeof schema.example === 'string' ? [fc.constant(schema.example)] : [];
  return fc.oneof(made(schema, known), ...shown);
}

const DAY = fc.date({ min: new Date('1850-01-01'), max: new Date('2250-12-31'), noInvalidDate: true });

function made({ format, pattern, minLength = 0, maxLength }: Schema, known: readonly string[]): Any {
  const least = Number(minLength);
  const most = Math.max(least, Math.min(Number(maxLength ?? MOST_CHARACTERS), MOST_CHARACTERS));
  if (format === 'uuid') return known.length > 0 ? fc.oneof(fc.constantFrom(...known), fc.uuid()) : fc.uuid();
  if (format === 'date') return DAY.map((moment) => moment.toISOString().slice(0, 10));
  if (format === 'date-time') return DAY.map((moment) => moment.toISOString());
  // A pattern says its own length, unless the schema says one besides: a hash has its 64 characters.
  if (typeof pattern === 'string')
    return matching(pattern).filter(({ length }) => maxLength === undefined || length <= Number(maxLength));
  return fc.string({ unit: 'grapheme', minLength: least, maxLength: most });
}

/** The library reads no looking ahead: made without, and sorted out afterwards. */
function matching(pattern: string): fc.Arbitrary<string> {
  const plain = new RegExp(pattern.replaceAll(/\(\?[!=][^)]*\)/g, ''), 'u');
  const whole = new RegExp(pattern, 'u');
  return fc.stringMatching(plain, { size: 'small' }).filter((text) => whole.test(text));
}

function list({ items, minItems = 0, maxItems = MOST_ENTRIES }: Schema, known: readonly string[]): Any {
  const least = Number(minItems);
  const maxLength = Math.max(least, Math.min(Number(maxItems), MOST_ENTRIES));
  return fc.array(fitting((items ?? {}) as Schema, known), { minLength: least, maxLength });
}

function object(
  { properties = {}, required = [], additionalProperties, propertyNames }: Schema,
  known: readonly string[],
): Any {
  const parts = Object.entries(properties as Record<string, Schema>);
  const model = Object.fromEntries(parts.map(([name, schema]) => [name, fitting(schema, known)]));
  if (parts.length > 0 || typeof additionalProperties !== 'object')
    return fc.record(model, { requiredKeys: [...(required as readonly string[])], noNullPrototype: true });
  const names = fitting({ type: 'string', ...((propertyNames ?? {}) as Schema) }, known) as fc.Arbitrary<string>;
  return fc.dictionary(names, fitting(additionalProperties as Schema, known), {
    maxKeys: MOST_ENTRIES,
    noNullPrototype: true,
  });
}

/** What a careless or hostile program may send in any place. */
const JUNK: Any = fc.oneof(
  fc.jsonValue({ maxDepth: 2 }),
  fc.constantFrom<unknown>(
    ...[
      '',
      ' ',
      '\u0000',
      '\ud800',
      '\u202e',
      '\u{1F6A4}',
      "'; drop table vessel; --",
      '../../etc/passwd',
      '__proto__',
    ],
    ...[
      '2024-02-30',
      '0000-01-01',
      '9999-12-31',
      '2024-13',
      '-271821-04-20',
      '2024-03-18T00:00:00Z',
      'P99999999Y',
      '1e3',
      'NaN',
    ],
    ...[0, -0, -1, 0.1, 1e21, -1e308, 2 ** 53, 5e-324, null, true, [], {}, [[]], { toString: 1 }, 'x'.repeat(3000)],
  ),
);

/** The value with something wrong or at least strange in one to three places: exchanged, left out, added. */
export function spoiled(value: Any): Any {
  const spoil = fc.record({ at: fc.nat(), how: fc.constantFrom('exchange', 'leave out', 'add'), junk: JUNK });
  return fc
    .tuple(value, fc.array(spoil, { minLength: 1, maxLength: 3 }))
    .map(([whole, spoils]) => spoils.reduce((before, { at, how, junk }) => spoilAt(before, at, how, junk), whole));
}

function spoilAt(value: unknown, at: number, how: string, junk: unknown): unknown {
  if (typeof value !== 'object' || value === null) return junk;
  const entries = Object.entries(value);
  const place = at % (entries.length + 1);
  const [name, inner] = entries[place] ?? [];
  const rest = entries.filter((_, each) => each !== place);
  const next = Math.floor(at / (entries.length + 1));
  const kept =
    name === undefined || how === 'add'
      ? [...entries, ['extra', junk] as const]
      : how === 'leave out'
        ? rest
        : [...rest, [name, next % 2 ? spoilAt(inner, next, how, junk) : junk] as const];
  return Array.isArray(value) ? kept.map(([, each]) => each) : Object.fromEntries(kept);
}

/** Text as it may stand in a query or a header. */
export const JUNK_TEXT: fc.Arbitrary<string> = JUNK.map((junk) =>
  typeof junk === 'string' ? junk : JSON.stringify(junk),
);
