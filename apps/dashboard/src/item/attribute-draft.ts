/** What somebody has typed of the values that rules ask for and no fact holds; by name, empty where not said. */
import type { components } from '@garboard/client/generated/api.d.ts';
import { strings } from '../strings/record.ts';
import { readDate } from '../ui/read-date.ts';

type Attribute = components['schemas']['Attribute'];
type Attributes = components['schemas']['Attributes'];
export type AttributeDraft = Readonly<Record<string, string>>;

const { attributes: words } = strings;

/** Only what rules for the kind read; what else is recorded stays as it is. */
export function draftOfAttributes(known: readonly Attribute[], recorded: Attributes): AttributeDraft {
  const said = known.filter(({ name }) => recorded[name] !== undefined);
  return Object.fromEntries(said.map(({ name, is }) => [name, inWords(is, recorded[name] ?? '')]));
}

function inWords(is: Attribute['is'], value: string | number | boolean): string {
  if (is === 'yes_no') return value === true ? 'yes' : 'no';
  return String(value);
}

export type ReadAttributes = { readonly values: Attributes; readonly faults: Readonly<Record<string, string>> };

/** Each value that was typed as the API takes it, and what is wrong with those that cannot be read. */
export function readAttributes(known: readonly Attribute[], draft: AttributeDraft): ReadAttributes {
  const values: Attributes = {};
  const faults: Record<string, string> = {};
  for (const { name, is } of known) {
    const typed = (draft[name] ?? '').trim();
    if (typed === '') continue;
    const read = readValue(is, typed);
    if ('why' in read) faults[name] = read.why;
    else values[name] = read.value;
  }
  return { values, faults };
}

type ReadValue = { readonly value: string | number | boolean } | { readonly why: string };

function readValue(is: Attribute['is'], typed: string): ReadValue {
  switch (is) {
    case 'months':
    case 'hours':
      return /^[1-9]\d{0,5}$/.test(typed) ? { value: Number(typed) } : { why: words.wholeNumber };
    case 'yes_no':
      return { value: typed === 'yes' };
    case 'date': {
      const read = readDate(typed);
      return read.kind === 'read' ? { value: read.date } : { why: read.why };
    }
    case 'choice':
      return { value: typed };
  }
}
