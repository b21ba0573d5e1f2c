/** An obligation as the API shows it: days as text, its standing on the day asked, and what would move it. */
import type { Obligation } from '@garboard/contract/item/obligation.ts';
import { type Day, formatDay } from '@garboard/domain/calendar/day.ts';
import { standsOn } from '@garboard/domain/due-list/standing.ts';
import type * as domain from '@garboard/domain/item/obligation.ts';
import { ifDoneOn } from '@garboard/domain/item/remedy.ts';

export function presentObligation(obligation: domain.Obligation, asOf: Day): Obligation {
  const { outcome, explanation, ...rest } = obligation;
  return {
    ruleId: rest.ruleId,
    duty: rest.duty,
    scheme: rest.scheme,
    weight: rest.weight,
    action: { kind: rest.action.kind, words: rest.action.words },
    ...presentDates(outcome),
    ...presentSuspension(obligation, asOf),
    standing: standsOn(obligation, asOf).standing,
    explanation: presentExplanation(explanation, asOf),
  };
}

export const byOverdueAfter = (a: domain.Obligation, b: domain.Obligation) => overdueAfter(a) - overdueAfter(b);
const overdueAfter = ({ outcome }: domain.Obligation) =>
  outcome.kind === 'dated' ? outcome.overdueAfter : Number.MAX_SAFE_INTEGER;

type Dates = Pick<Obligation, 'dueOn' | 'overdueAfter' | 'expiresOn' | 'replaceBy' | 'latestPermittedOn' | 'windows'>;

function presentDates(outcome: domain.DueOutcome): Dates {
  switch (outcome.kind) {
    case 'undated':
      return { windows: [] };
    case 'dated':
      return {
        dueOn: formatDay(outcome.dueOn),
        overdueAfter: formatDay(outcome.overdueAfter),
        ...(outcome.expiresOn !== undefined && { expiresOn: formatDay(outcome.expiresOn) }),
        ...(outcome.replaceBy !== undefined && { replaceBy: formatDay(outcome.replaceBy) }),
        ...(outcome.latestPermittedOn !== undefined && { latestPermittedOn: formatDay(outcome.latestPermittedOn) }),
        windows: outcome.windows.map(({ opens, closes }) => ({ opens: formatDay(opens), closes: formatDay(closes) })),
      };
  }
}

export function presentSuspension(obligation: domain.Obligation, asOf: Day) {
  const { suspended } = standsOn(obligation, asOf);
  if (!suspended) return {};
  const { from, until } = suspended;
  return { suspendedFrom: formatDay(from), ...(until !== null && { suspendedUntil: formatDay(until) }) };
}

function presentExplanation(explanation: domain.Explanation, asOf: Day): Obligation['explanation'] {
  return {
    sentence: explanation.sentence,
    source: presentSource(explanation.source),
    binds: explanation.binds && presentLimit(explanation.binds),
    alsoCounted: explanation.alsoCounted.map(presentLimit),
    setAside: explanation.setAside.map(({ factId, why }) => ({ factId, why })),
    assumed: [...explanation.assumed],
    doubts: [...explanation.doubts],
    missing: explanation.missing.map(({ what, whereFound }) => ({ what, whereFound })),
    wouldChangeIt: explanation.wouldChangeIt.map((remedy) => presentRemedy(remedy, asOf)),
    ...(explanation.overrideId && { overrideId: explanation.overrideId }),
    ...(explanation.notice && { notice: { id: explanation.notice.id, match: explanation.notice.match } }),
  };
}

export function presentSource({
  publication,
  clause,
  address,
  status,
  fromMemory,
}: domain.Explanation['source']): Obligation['explanation']['source'] {
  return { publication, clause, address, status, ...(fromMemory && { fromMemory }) };
}

function presentLimit({ limit, on, factIds }: domain.CountedLimit) {
  return { limit, on: on === null ? null : formatDay(on), factIds: [...factIds] };
}

function presentRemedy(remedy: domain.Remedy, asOf: Day) {
  const movesTo = ifDoneOn(remedy, asOf);
  return {
    act: remedy.act,
    ...(remedy.test && { test: remedy.test }),
    by: [...remedy.by],
    plus: remedy.plus,
    ifDoneOn: formatDay(asOf),
    movesTo: movesTo === null ? null : formatDay(movesTo),
  };
}
