/** Answers a case's request from the rules engine itself, in the words of the API. */
import { type Day, formatDay, parseDay } from '@garboard/domain/calendar/day.ts';
import { parseRecordedDate } from '@garboard/domain/calendar/recorded-date.ts';
import { standsOn } from '@garboard/domain/due-list/standing.ts';
import type { Fact } from '@garboard/domain/item/fact.ts';
import { findItemKind } from '@garboard/domain/item/item-kind.ts';
import type { Obligation } from '@garboard/domain/item/obligation.ts';
import { withPlatesPlaced } from '@garboard/domain/item/place-plates.ts';
import { workOutObligations } from '@garboard/domain/item/work-out-obligations.ts';
import { SCHEME_IDS, type SchemeId } from '@garboard/domain/rule/scheme.ts';
import { type Situation, VESSEL_EVENTS, type VesselEvent } from '@garboard/domain/vessel/situation.ts';
import type { Answered } from './differences.ts';
import type { ExplainBody, StatedFact, StatedSituation } from './read-cases.ts';

/** Before any `knownAt`: always known. */
const ALWAYS = '0000-01-01T00:00:00Z';

export function answerFromDomain({
  kind,
  attributes,
  schemes,
  facts,
  situations,
  events,
  asOf,
  knownAt,
}: ExplainBody): readonly Answered[] {
  const known = findItemKind(kind);
  if (!known) throw new Error(`no kind of item: ${kind}`);
  const item = { kind: known.id, attributes: attributes ?? {}, facts: withPlatesPlaced(facts.map(toFact)) };
  const vessel = {
    schemes: schemes.map(toScheme),
    situations: (situations ?? []).map(toSituation),
    events: (events ?? []).map(toEvent),
  };
  const cut = { asOf: toDay(asOf), ...(knownAt !== undefined && { knownAt }) };
  return workOutObligations(item, vessel, cut).map((obligation) => show(obligation, cut.asOf));
}

function toFact({ on, until, readOn, ...stated }: StatedFact, at: number): Fact {
  const date = parseRecordedDate(on);
  if (!date) throw new Error(`no date: ${on}`);
  return {
    id: `${at}`,
    outcome: 'passed',
    evidence: 'unknown',
    recordedAt: ALWAYS,
    ...stated,
    on: date,
    ...(until !== undefined && { until: toDay(until) }),
    ...(readOn !== undefined && { readOn: toDay(readOn) }),
  } as Fact;
}

function toSituation({ from, ...stated }: StatedSituation, at: number): Situation {
  return { dismantled: false, underRepair: false, ...stated, id: `${at}`, from: toDay(from), recordedAt: ALWAYS };
}

function toEvent({ event, on, planned }: NonNullable<ExplainBody['events']>[number], at: number): VesselEvent {
  const known = VESSEL_EVENTS.find((each) => each === event);
  if (!known) throw new Error(`no event: ${event}`);
  return { id: `${at}`, event: known, on: toDay(on), planned: planned ?? false, recordedAt: ALWAYS };
}

function toScheme(text: string): SchemeId {
  const scheme = SCHEME_IDS.find((each) => each === text);
  if (!scheme) throw new Error(`no scheme: ${text}`);
  return scheme;
}

function toDay(text: string): Day {
  const day = parseDay(text);
  if (day === null) throw new Error(`no day: ${text}`);
  return day;
}

function show(obligation: Obligation, asOf: Day): Answered {
  const { ruleId, duty, outcome, explanation } = obligation;
  const { standing, suspended } = standsOn(obligation, asOf);
  const about = {
    ruleId,
    duty,
    standing,
    explanation,
    ...(suspended && { suspendedFrom: formatDay(suspended.from) }),
    ...(suspended?.until != null && { suspendedUntil: formatDay(suspended.until) }),
  };
  if (outcome.kind === 'undated') return { ...about, windows: [] };
  const { dueOn, overdueAfter, expiresOn, replaceBy, latestPermittedOn, windows } = outcome;
  return {
    ...about,
    dueOn: formatDay(dueOn),
    overdueAfter: formatDay(overdueAfter),
    ...(expiresOn !== undefined && { expiresOn: formatDay(expiresOn) }),
    ...(replaceBy !== undefined && { replaceBy: formatDay(replaceBy) }),
    ...(latestPermittedOn !== undefined && { latestPermittedOn: formatDay(latestPermittedOn) }),
    windows: windows.map(({ opens, closes }) => ({ opens: formatDay(opens), closes: formatDay(closes) })),
  };
}
