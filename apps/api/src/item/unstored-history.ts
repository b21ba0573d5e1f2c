/** What a request to explain states, as values of the domain; or what is wrong with it that no schema can see. */
import type { ExplainRequest } from '@garboard/contract/item/explain.ts';
import type { UnstoredFact } from '@garboard/contract/item/fact.ts';
import type { Fault } from '@garboard/contract/problem.ts';
import type { Day } from '@garboard/domain/calendar/day.ts';
import { parseRecordedDate } from '@garboard/domain/calendar/recorded-date.ts';
import type { Fact } from '@garboard/domain/item/fact.ts';
import { factProblems } from '@garboard/domain/item/fact-problems.ts';
import { findItemKind } from '@garboard/domain/item/item-kind.ts';
import type { ItemHistory, VesselHistory } from '@garboard/domain/item/work-out-obligations.ts';
import { dayOfText } from '../request/as-at.ts';
import { given } from '../request/given.ts';

type Unstored =
  | { readonly ok: true; readonly item: ItemHistory; readonly vessel: VesselHistory; readonly doubts: readonly Fault[] }
  | { readonly ok: false; readonly errors: readonly Fault[] };

/** Stands for "always known": before every `knownAt`. */
const ALWAYS = '0000-01-01T00:00:00Z';

/** `latest`: what was done lies no later than this day. */
export function readUnstored(asked: ExplainRequest, latest: Day): Unstored {
  const kind = findItemKind(asked.kind);
  const nameless = kind ? [] : [{ pointer: '/kind', detail: 'is no kind of item in the catalogue' }];
  const errors = [...nameless, ...nameFaults(asked.facts)];
  if (!kind || errors.length > 0) return { ok: false, errors };
  const item = { kind: kind.id, attributes: asked.attributes, facts: asked.facts.map(toFact) };
  const { problems, doubts } = judge(item, latest);
  return problems.length > 0 ? { ok: false, errors: problems } : { ok: true, item, vessel: toVessel(asked), doubts };
}

function toVessel({ schemes, situations, events }: ExplainRequest): VesselHistory {
  return {
    schemes,
    situations: situations.map((each, at) => ({
      recordedAt: ALWAYS,
      ...given(each),
      id: `${at}`,
      from: dayOfText(each.from),
    })),
    events: events.map(({ note, ...each }, at) => ({
      recordedAt: ALWAYS,
      ...given(each),
      id: `${at}`,
      on: dayOfText(each.on),
    })),
  };
}

function toFact({ on, until, readOn, doneBy, ...stated }: UnstoredFact, at: number): Fact {
  const date = parseRecordedDate(on);
  if (!date) throw new Error(`no date: ${on}`);
  return {
    id: `${at}`,
    recordedAt: ALWAYS,
    ...given(stated),
    on: date,
    ...(until !== undefined && { until: dayOfText(until) }),
    ...(readOn !== undefined && { readOn: dayOfText(readOn) }),
    ...(doneBy && { doneBy: given(doneBy) }),
  } as Fact;
}

/** Each fact beside those stated before it, as if they had been recorded in this order. */
function judge({ kind, attributes, facts }: ItemHistory, latest: Day): { problems: Fault[]; doubts: Fault[] } {
  const judged = facts.map((fact, at) => factProblems(fact, { kind, attributes, facts: facts.slice(0, at) }, latest));
  const under = (at: number, pointer: string, detail: string) => ({ pointer: `/facts/${at}${pointer}`, detail });
  return {
    problems: judged.flatMap(({ problems }, at) => problems.map(({ pointer, detail }) => under(at, pointer, detail))),
    doubts: judged.flatMap(({ doubts }, at) => doubts.map((detail) => under(at, '', detail))),
  };
}

/** A name stands for one fact, and a correction names a fact of this request. */
function nameFaults(facts: readonly UnstoredFact[]): Fault[] {
  const names = facts.map(({ id }, at) => id ?? `${at}`);
  const known = new Set(names);
  return facts.flatMap(({ corrects }, at) => [
    ...(names.indexOf(names[at] ?? '') < at
      ? [{ pointer: `/facts/${at}/id`, detail: 'stands for another fact already' }]
      : []),
    ...(corrects === undefined || known.has(corrects)
      ? []
      : [{ pointer: `/facts/${at}/corrects`, detail: 'names no fact in this request' }]),
  ]);
}
