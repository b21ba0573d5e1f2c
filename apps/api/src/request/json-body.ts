/** Reads a body as JSON, strictly, before any schema sees it: what cannot be read or stored is refused in words. */
import type { Fault } from '@garboard/contract/problem.ts';
import { createMiddleware } from 'hono/factory';
import type { ApiEnv } from '../deps.ts';
import { jsonPointer } from '../problem/json-pointer.ts';
import { problem } from '../problem/problem.ts';
import { atMost, readBytes } from './body-bytes.ts';
import { MAX_BODY_BYTES, MAX_BODY_DEPTH } from './limits.ts';
import { repeatedNames } from './repeated-names.ts';

const JSON_TYPE = /^application\/json\s*(;\s*charset\s*=\s*("utf-8"|utf-8)\s*)?$/i;

const KIND = { type: JSON_TYPE, accept: 'application/json' };

const read = createMiddleware<ApiEnv>(async (c, next) => {
  const came = await readBytes(c, KIND);
  if (!came.ok) return came.answer;
  const body = parse(came.bytes);
  if (!body) return problem(c, 'malformed-json');
  const walked = walk(body.value);
  if (walked === 'too deep')
    return problem(c, 'malformed-json', { detail: `It is nested more than ${MAX_BODY_DEPTH} deep.` });
  const errors = [...walked, ...repeatedNames(body.text).map((pointer) => ({ pointer, detail: 'is given twice' }))];
  if (errors.length > 0) return problem(c, 'invalid', { errors });
  return next();
});

export const jsonBody = [atMost(MAX_BODY_BYTES), read];

function parse(bytes: ArrayBuffer): { text: string; value: unknown } | null {
  try {
    const text = new TextDecoder('utf-8', { fatal: true }).decode(bytes);
    return { text, value: JSON.parse(text) };
  } catch {
    return null;
  }
}

/** Text that PostgreSQL cannot hold: NUL, and half of a surrogate pair. */
const isStorable = (text: string) => text.isWellFormed() && !text.includes('\u0000');

function walk(root: unknown): Fault[] | 'too deep' {
  const faults: Fault[] = [];
  const open: { value: unknown; pointer: string; depth: number }[] = [{ value: root, pointer: '', depth: 0 }];
  for (let next = open.pop(); next; next = open.pop()) {
    const { value, pointer, depth } = next;
    if (typeof value === 'string' && !isStorable(value))
      faults.push({ pointer, detail: 'is not a text that can be kept' });
    if (typeof value !== 'object' || value === null) continue;
    if (depth === MAX_BODY_DEPTH) return 'too deep';
    for (const [key, inner] of Object.entries(value)) {
      const place = `${pointer}${jsonPointer([key.toWellFormed()])}`;
      if (!isStorable(key)) faults.push({ pointer: place, detail: 'is not a name that can be kept' });
      open.push({ value: inner, pointer: place, depth: depth + 1 });
    }
  }
  return faults;
}
