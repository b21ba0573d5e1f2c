/** Turns what a schema found wrong into faults: one for each place, in plain words. */
import type { Fault } from '@garboard/contract/problem.ts';
import type { z } from '@hono/zod-openapi';
import { jsonPointer } from './json-pointer.ts';

type Issue = z.core.$ZodIssue;
type Target = 'json' | 'query' | 'param' | 'header' | 'cookie' | 'form';

export function faultsOf(target: Target, issues: readonly Issue[]): Fault[] {
  return issues.flatMap((issue) => toFaults(target, issue));
}

function toFaults(target: Target, issue: Issue): Fault[] {
  const inside = insideOf(issue);
  if (inside.length > 0) return faultsOf(target, inside);
  if (issue.code !== 'unrecognized_keys') return [{ pointer: pointerTo(target, issue.path), detail: inWords(issue) }];
  return issue.keys.map((key) => ({
    pointer: pointerTo(target, [...issue.path, key]),
    detail: 'cannot be given here',
  }));
}

/** Of "a shape, or null": what is wrong inside the shape, where the value has an inside. */
function insideOf(issue: Issue): Issue[] {
  if (issue.code !== 'invalid_union') return [];
  const inner = issue.errors.filter((branch) => branch.some(({ path }) => path.length > 0));
  return inner.length === 1
    ? inner.flat().map((each) => ({ ...each, path: [...issue.path, ...each.path] }) as Issue)
    : [];
}

/** RFC 6901 for a body; `#query/asOf` for a parameter. */
function pointerTo(target: Target, path: readonly PropertyKey[]): string {
  return target === 'json' ? jsonPointer(path) : `#${target}${jsonPointer(path)}`;
}

function inWords(issue: Issue): string {
  switch (issue.code) {
    case 'invalid_type':
      return issue.message.endsWith('received undefined')
        ? 'is missing'
        : `must be ${WORDS[issue.expected] ?? issue.expected}`;
    case 'invalid_value':
      return `must be ${issue.values.length > 1 ? 'one of ' : ''}${issue.values.map(String).join(', ')}`;
    case 'too_small':
      return (
        ownWords(issue) ??
        `must be ${issue.inclusive ? 'at least' : 'more than'} ${measure(issue.origin, issue.minimum)}`
      );
    case 'too_big':
      return (
        ownWords(issue) ??
        `must be ${issue.inclusive ? 'at most' : 'less than'} ${measure(issue.origin, issue.maximum)}`
      );
    case 'invalid_key':
      return issue.issues[0]?.message ?? issue.message;
    case 'invalid_format':
    case 'invalid_union':
    case 'not_multiple_of':
    case 'unrecognized_keys':
    case 'invalid_element':
    case 'custom':
      return issue.message;
  }
}

const WORDS: Partial<Record<string, string>> = {
  string: 'a text',
  number: 'a number',
  int: 'a whole number',
  boolean: 'true or false',
  array: 'a list',
  object: 'an object',
  record: 'an object',
};

/** What the contract says itself goes before what the library would say. */
const ownWords = ({ message }: Issue) => (message.startsWith('Too ') ? undefined : message);

function measure(origin: string, size: number | bigint): string {
  if (origin === 'string') return `${size} characters long`;
  return origin === 'array' ? `${size} entries` : `${size}`;
}
