/** What a request to explain states, as values of the domain; or what is wrong with it that no schema can see. */
import type { ExplainRequest } from '@garboard/contract/item/explain.ts';
import type { UnstoredFact } from '@garboard/contract/item/fact.ts';
import type { Fault } from '@garboard/contract/problem.ts';
import { parseRecordedDate } from '@garboard/domain/calendar/recorded-date.ts';
import type { Fact } from '@garboard/domain/item/fact.ts';
import { findItemKind } from '@garboard/domain/item/item-kind.ts';
import type { ItemHistory, VesselHistory } from '@garboard/domain/item/work-out-obligations.ts';
import { dayOfText } from '../request/as-at.ts';
import { given } from '../request/given.ts';

type Unstored =
  | { readonly ok: true; readonly item: ItemHistory; readonly vessel: VesselHistory }
  | { readonly ok: false; readonly errors: readonly Fault[] };

/** Stands for "always known": before every `knownAt`. */
const ALWAYS = '0000-01-01T00:00:00Z';

export function readUnstored({ kind, attributes, schemes, facts, situations, events }: ExplainRequest): Unstored {
  const known = findItemKind(kind);
  const errors = [
    ...(known ? [] : [{ pointer: '/kind', detail: 'is no kind of item in the catalogue' }]),
    ...idFaults(facts),
  ];
  if (!known || errors.length > 0) return { ok: false, errors };
  return {
    ok: true,
    item: { kind: known.id, attributes, facts: facts.map(toFact) },
    vessel: {
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
    },
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

/** A name stands for one fact, and a correction names a fact of this request. */
function idFaults(facts: readonly UnstoredFact[]): Fault[] {
  const ids = facts.map(({ id }, at) => id ?? `${at}`);
  return facts.flatMap(({ corrects }, at) => [
    ...(ids.indexOf(ids[at] ?? '') < at
      ? [{ pointer: `/facts/${at}/id`, detail: 'stands for another fact already' }]
      : []),
    ...(corrects === undefined || ids.includes(corrects)
      ? []
      : [{ pointer: `/facts/${at}/corrects`, detail: 'names no fact in this request' }]),
  ]);
}
