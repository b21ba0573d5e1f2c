/** Short ways to write facts, days and the question "what is owed?" in tests. */
import { type Day, formatDay, parseDay } from '../calendar/day.ts';
import { parseRecordedDate, type RecordedDate } from '../calendar/recorded-date.ts';
import type { SchemeId } from '../rule/scheme.ts';
import type { Situation, VesselEvent, VesselEventKind } from '../vessel/situation.ts';
import type { Capacity, Fact, FactKind } from './fact.ts';
import type { ItemKindId } from './item-kind.ts';
import type { Obligation } from './obligation.ts';
import { type Attributes, type Cut, workOutObligations } from './work-out-obligations.ts';

export function day(text: string): Day {
  const parsed = parseDay(text);
  if (parsed === null) throw new Error(`not a day: ${text}`);
  return parsed;
}

export function recorded(text: string): RecordedDate {
  const parsed = parseRecordedDate(text);
  if (parsed === null) throw new Error(`not a date: ${text}`);
  return parsed;
}

type Extra = Partial<Omit<Fact, 'fact' | 'on' | 'doneBy'>> & { readonly by?: Capacity };

/** Passed, known since 2000; its id is its kind and date unless another is given. */
export function fact(kind: FactKind, on: string, { by, ...extra }: Extra = {}): Fact {
  return {
    id: `${kind} ${on}`,
    fact: kind,
    on: recorded(on),
    outcome: 'passed',
    evidence: 'record',
    recordedAt: '2000-01-01T00:00:00Z',
    ...(by && { doneBy: { capacity: by } }),
    ...extra,
  };
}

export function planned(event: VesselEventKind, on: string): VesselEvent {
  return { id: `${event} ${on}`, event, on: day(on), planned: true, recordedAt: '2000-01-01T00:00:00Z' };
}

export function held(event: VesselEventKind, on: string): VesselEvent {
  return { ...planned(event, on), planned: false };
}

/** Laid up ashore and dismantled from that day, unless told otherwise. */
export function situation(from: string, more: Partial<Omit<Situation, 'from'>> = {}): Situation {
  return {
    id: `situation ${from}`,
    from: day(from),
    place: 'ashore',
    use: 'laid_up',
    dismantled: true,
    underRepair: false,
    recordedAt: '2000-01-01T00:00:00Z',
    ...more,
  };
}

export type Question = {
  readonly kind: ItemKindId;
  readonly schemes?: readonly SchemeId[];
  readonly facts?: readonly Fact[];
  readonly attributes?: Attributes;
  readonly situations?: readonly Situation[];
  readonly events?: readonly VesselEvent[];
  readonly cut?: Cut;
};

export function owed({
  kind,
  schemes = [],
  facts = [],
  attributes = {},
  situations = [],
  events = [],
  cut,
}: Question): readonly Obligation[] {
  return workOutObligations({ kind, attributes, facts }, { schemes, situations, events }, cut);
}

/** The one obligation under the rule (and duty, where it has several). */
export function owedUnder(ruleId: string, question: Question, duty?: string): Obligation {
  const found = owed(question).filter((one) => one.ruleId === ruleId && (!duty || one.duty === duty));
  const [only, ...more] = found;
  if (!only || more.length > 0) throw new Error(`${found.length} obligations under ${ruleId} ${duty ?? ''}`);
  return only;
}

/** The dates as text, without those that are absent and the lead time; `missing` where there is no date. */
export function datesOf({ outcome }: Obligation): Record<string, unknown> {
  if (outcome.kind === 'undated') return { missing: outcome.missing.map(({ what }) => what) };
  const { kind: _, dueFrom: __, windows, ...days } = outcome;
  const dates = Object.entries(days).map(([name, on]) => [name, formatDay(on)]);
  const spans = windows.map(({ opens, closes }) => [formatDay(opens), formatDay(closes)]);
  return { ...Object.fromEntries(dates), ...(spans.length > 0 && { windows: spans }) };
}
