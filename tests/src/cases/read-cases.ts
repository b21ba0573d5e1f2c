/**
 * The worked cases under `tests/cases`: a request to explain and the answer expected, each with the clause
 * that it applies. They are data, so that a case can be added without code; a word that no case may
 * contain is a fault here, so that a slip of the pen cannot pass for an expectation.
 */
import { readdirSync, readFileSync } from 'node:fs';

const FOLDER = new URL('../../cases/due-dates/', import.meta.url);

export type StatedFact = {
  readonly fact: string;
  readonly on: string;
  readonly outcome?: string;
  readonly test?: string;
  readonly doneBy?: { readonly name?: string; readonly capacity?: string; readonly certificate?: string };
  readonly evidence?: string;
  readonly until?: string;
  readonly readOn?: string;
  readonly reading?: { readonly value: number; readonly unit: string };
  readonly recordedAt?: string;
  readonly id?: string;
  readonly corrects?: string;
};

export type StatedSituation = {
  readonly from: string;
  readonly place: 'afloat' | 'ashore';
  readonly use: 'in_commission' | 'laid_up' | 'out_of_service';
  readonly dismantled?: boolean;
  readonly underRepair?: boolean;
};

/** The body of `POST /v1/due-dates/explain`. */
export type ExplainBody = {
  readonly kind: string;
  readonly attributes?: Readonly<Record<string, string | number | boolean>>;
  readonly schemes: readonly string[];
  readonly facts: readonly StatedFact[];
  readonly situations?: readonly StatedSituation[];
  readonly events?: readonly { readonly event: string; readonly on: string; readonly planned?: boolean }[];
  readonly asOf: string;
  readonly knownAt?: string;
};

/** What one obligation of the answer must say; `null` for a date that must be absent. */
export type Expected = {
  readonly ruleId: string;
  readonly duty?: string;
  /** There must be no such obligation. */
  readonly absent?: true;
  readonly dueOn?: string | null;
  readonly overdueAfter?: string | null;
  readonly expiresOn?: string | null;
  readonly replaceBy?: string | null;
  readonly latestPermittedOn?: string | null;
  readonly windows?: readonly { readonly opens: string; readonly closes: string }[];
  readonly suspendedFrom?: string | null;
  readonly suspendedUntil?: string | null;
  readonly standing?: string;
  /** Words that one of the explanation's doubts must contain. */
  readonly doubt?: string;
};

export type DueDateCase = {
  /** The number of a case of the published collection, or a name of our own. */
  readonly case: number | string;
  readonly title: string;
  readonly publication: string | null;
  readonly clause: string | null;
  readonly address: string | null;
  readonly derivation: string;
  readonly request: ExplainBody;
  readonly expect: readonly Expected[];
};

/** What a case can expect of an obligation and have compared as it stands. */
export const SHOWN = [
  'dueOn',
  'overdueAfter',
  'expiresOn',
  'replaceBy',
  'latestPermittedOn',
  'windows',
  'suspendedFrom',
  'suspendedUntil',
  'standing',
] as const;

const KEYS = {
  case: ['case', 'title', 'publication', 'clause', 'address', 'derivation', 'request', 'expect'],
  request: ['kind', 'attributes', 'schemes', 'facts', 'situations', 'events', 'asOf', 'knownAt'],
  expected: ['ruleId', 'duty', 'absent', ...SHOWN, 'doubt'],
} as const;

/** Every case of every file, in the files' order. */
export function readDueDateCases(): readonly DueDateCase[] {
  const files = readdirSync(FOLDER)
    .filter((name) => name.endsWith('.json'))
    .sort();
  return files.flatMap((name) => {
    const cases = JSON.parse(readFileSync(new URL(name, FOLDER), 'utf8')) as DueDateCase[];
    for (const each of cases) checkWords(name, each);
    return cases;
  });
}

function checkWords(file: string, each: DueDateCase): void {
  const where = `${file}, case ${each.case}`;
  onlyKnown(where, each, KEYS.case);
  onlyKnown(where, each.request, KEYS.request);
  for (const expected of each.expect) onlyKnown(where, expected, KEYS.expected);
  if (each.expect.length === 0) throw new Error(`${where} expects nothing`);
}

function onlyKnown(where: string, thing: object, known: readonly string[]): void {
  const unknown = Object.keys(thing).filter((key) => !known.includes(key));
  if (unknown.length > 0) throw new Error(`${where}: no case has ${unknown.join(', ')}`);
}
