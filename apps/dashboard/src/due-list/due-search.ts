/** What the due list's address may say. Anything else in it is left aside, so that an old link still opens. */
import {
  type SchemeCode,
  type StandingCode,
  schemeWords,
  standingWords,
  type WeightCode,
  weightWords,
} from '../strings/codes.ts';
import { type DueSource, dueSourceWords } from '../strings/due-list.ts';
import { addMonths, daysBetween, readersToday } from '../ui/calendar.ts';

export const UNTIL = { '3-months': 3, '6-months': 6, '12-months': 12, '24-months': 24 } as const;
export type Until = keyof typeof UNTIL | 'any';

export type DueSearch = {
  standing?: StandingCode | undefined;
  vessel?: string | undefined;
  kind?: string | undefined;
  scheme?: SchemeCode | undefined;
  weight?: WeightCode | undefined;
  source?: DueSource | undefined;
  /** Left out: 12 months. */
  until?: Until | undefined;
  asAt?: string | undefined;
  /** The row whose reasoning is open. */
  open?: string | undefined;
  /** The saved view that these words come from. */
  view?: string | undefined;
};

export const DEFAULT_UNTIL = '12-months';

type Raw = Record<string, unknown>;

export function readDueSearch(raw: Raw): DueSearch {
  return present({
    standing: oneOf(raw.standing, standingWords),
    vessel: text(raw.vessel),
    kind: text(raw.kind),
    scheme: oneOf(raw.scheme, schemeWords),
    weight: oneOf(raw.weight, weightWords),
    source: oneOf(raw.source, dueSourceWords),
    until: raw.until === 'any' ? 'any' : oneOf(raw.until, UNTIL),
    asAt: day(raw.asAt),
    open: text(raw.open),
    view: text(raw.view),
  });
}

/** The same, as the API's parameters; `horizonDays` counted from the day asked. */
export function toDueQuery(search: DueSearch) {
  const { standing, vessel, kind, scheme, weight, source, asAt } = search;
  const until = search.until ?? DEFAULT_UNTIL;
  const from = asAt ?? readersToday();
  return present({
    standing,
    vesselId: vessel,
    kind,
    scheme,
    weight,
    source,
    asOf: asAt,
    horizonDays: until === 'any' ? undefined : daysBetween(from, addMonths(from, UNTIL[until])),
  });
}

/** Whether anything but the day is chosen. */
export function isFiltered({ standing, vessel, kind, scheme, weight, source }: DueSearch): boolean {
  return [standing, vessel, kind, scheme, weight, source].some((each) => each !== undefined);
}

export function text(value: unknown): string | undefined {
  return typeof value === 'string' && value !== '' ? value : undefined;
}

export function day(value: unknown): string | undefined {
  return typeof value === 'string' && /^\d{4}-\d{2}-\d{2}$/.test(value) && !Number.isNaN(Date.parse(value))
    ? value
    : undefined;
}

export function oneOf<Code extends string>(value: unknown, codes: Record<Code, unknown>): Code | undefined {
  return typeof value === 'string' && Object.hasOwn(codes, value) ? (value as Code) : undefined;
}

type Present<T> = { [Key in keyof T]?: Exclude<T[Key], undefined> };

/** Without the keys that have no value, which would stand in the address as empty words. */
export function present<T extends object>(all: T): Present<T> {
  return Object.fromEntries(Object.entries(all).filter(([, value]) => value !== undefined)) as Present<T>;
}
