/**
 * Names that stand more than once in the same object of a JSON text. `JSON.parse` keeps the last of them without a
 * word, and other programs the first: RFC 8259, section 4, and RFC 7493, section 2.3 (“MUST NOT”).
 */
import { jsonPointer } from '../problem/json-pointer.ts';

/** Whole strings and what holds a text together; numbers and words are passed over. */
const TOKEN = /"[^"\\]*(?:\\.[^"\\]*)*"|[{}[\],:]/g;

type Open = { readonly steps: readonly (string | number)[]; readonly names?: Set<string>; at: string | number };

/** Their RFC 6901 pointers, each once. The text must be one that `JSON.parse` reads. */
export function repeatedNames(json: string): string[] {
  const repeated = new Set<string>();
  const open: Open[] = [];
  let before = '';
  for (const [token] of json.matchAll(TOKEN)) {
    const here = open.at(-1);
    if (token === '{' || token === '[') open.push(opened(token, here));
    else if (token === '}' || token === ']') open.pop();
    else if (token === ',' && typeof here?.at === 'number') here.at += 1;
    else if (token.startsWith('"') && here?.names && before !== ':') {
      here.at = JSON.parse(token) as string;
      if (here.names.has(here.at)) repeated.add(jsonPointer([...here.steps, here.at]));
      here.names.add(here.at);
    }
    before = token;
  }
  return [...repeated];
}

function opened(token: '{' | '[', within: Open | undefined): Open {
  const steps = within ? [...within.steps, within.at] : [];
  return token === '{' ? { steps, names: new Set(), at: '' } : { steps, at: 0 };
}
