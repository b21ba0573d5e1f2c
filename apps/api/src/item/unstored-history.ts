/** What a request to explain states, as values of the domain; or what is wrong with it that no schema can see. */
import type { ExplainRequest, UnstoredOverride } from '@garboard/contract/item/explain.ts';
import type { UnstoredFact } from '@garboard/contract/item/fact.ts';
import type { Fault } from '@garboard/contract/problem.ts';
import { type Day, dayOfText } from '@garboard/domain/calendar/day.ts';
import { parseRecordedDate } from '@garboard/domain/calendar/recorded-date.ts';
import { attributeProblems } from '@garboard/domain/item/attribute-problems.ts';
import type { Fact } from '@garboard/domain/item/fact.ts';
import { factProblems } from '@garboard/domain/item/fact-problems.ts';
import { findItemKind } from '@garboard/domain/item/item-kind.ts';
import { withPlatesPlaced } from '@garboard/domain/item/place-plates.ts';
import type { ItemHistory, VesselHistory } from '@garboard/domain/item/work-out-obligations.ts';
import type { Override } from '@garboard/domain/rule/override.ts';
import { overrideProblems } from '@garboard/domain/rule/override-problems.ts';
import type { PeriodText } from '@garboard/domain/rule/rule.ts';
import { given } from '../request/given.ts';
import { ownRuleFaults, toOwnRule } from './unstored-own-rule.ts';

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
  const item: ItemHistory = {
    kind: kind.id,
    attributes: asked.attributes,
    facts: withPlatesPlaced(asked.facts.map(toFact)),
    overrides: asked.overrides.map(toOverride),
  };
  const attributes = attributeProblems(kind, item.attributes);
  const facts = judge(item, latest);
  const problems = [
    ...facts.problems,
    ...attributes.problems.map(({ pointer, detail }) => ({ pointer: `/attributes${pointer}`, detail })),
    ...ownRuleFaults(asked.ownRules),
    ...asked.overrides.flatMap((each, at) => overrideProblems(each, kind.id).map(under(`/overrides/${at}`))),
  ];
  if (problems.length > 0) return { ok: false, errors: problems };
  const unread = attributes.doubts.map((detail) => ({ pointer: '/attributes', detail }));
  return { ok: true, item, vessel: toVessel(asked), doubts: [...facts.doubts, ...unread] };
}

const under =
  (path: string) =>
  ({ pointer, detail }: Fault): Fault => ({ pointer: `${path}${pointer}`, detail });

function toOverride({ ended, from, period, ...stated }: UnstoredOverride, at: number): Override {
  return {
    id: `${at}`,
    recordedAt: ALWAYS,
    ...given(stated),
    itemId: null,
    period: period as PeriodText,
    from: dayOfText(from),
    ended: ended ? { on: dayOfText(ended.on), recordedAt: ended.recordedAt ?? ALWAYS } : null,
  };
}

function toVessel({ schemes, situations, events, ownRules }: ExplainRequest): VesselHistory {
  return {
    schemes,
    ownRules: ownRules.map((each, at) => toOwnRule(each, at, ALWAYS)),
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

/** Each fact beside those stated before it, as if they had been recorded in this order, and beside every replacement. */
function judge({ kind, attributes, facts }: ItemHistory, latest: Day): { problems: Fault[]; doubts: Fault[] } {
  const judged = facts.map((fact, at) => {
    const beside = facts.filter((other, place) => place < at || (other.fact === 'replaced' && place > at));
    return factProblems(fact, { kind, attributes, facts: beside }, latest);
  });
  return {
    problems: judged.flatMap(({ problems }, at) =>
      problems.map(under(`/facts/${at}`)).map((fault) => withWayOut(fault, facts[at], latest)),
    ),
    doubts: judged.flatMap(({ doubts }, at) => doubts.map((detail) => ({ pointer: `/facts/${at}`, detail }))),
  };
}

/** What lies ahead can be asked about: as at a later day. */
function withWayOut(fault: Fault, fact: Fact | undefined, latest: Day): Fault {
  if (!fault.pointer.endsWith('/on') || !fact || fact.fact === 'printed_expiry' || fact.on.first <= latest)
    return fault;
  return { ...fault, detail: `${fault.detail} To ask about a later day, give it as \`asOf\`.` };
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
