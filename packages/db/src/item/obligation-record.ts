/** An obligation's row and the value it stands for. Days are ISO text in the row, integers in the value. */
import { addDays, type Day, dayOfText, formatDay } from '@garboard/domain/calendar/day.ts';
import type { CountedLimit, DueOutcome, Explanation, Obligation, Suspended } from '@garboard/domain/item/obligation.ts';
import type { ActionKind } from '@garboard/domain/rule/rule.ts';
import type { SchemeId, Weight } from '@garboard/domain/rule/scheme.ts';
import type { Insertable, Selectable } from 'kysely';
import type { ObligationTable } from './tables.ts';

/** Stands in both date columns where there is no date to go by; sorts after every day. */
export const NO_DATE = 'infinity';

type Place = { readonly organisationId: string; readonly vesselId: string; readonly itemId: string };

export function toObligationColumns(place: Place, obligation: Obligation): Insertable<ObligationTable> {
  return {
    organisation_id: place.organisationId,
    item_id: place.itemId,
    rule_id: obligation.ruleId,
    duty: obligation.duty,
    vessel_id: place.vesselId,
    scheme: obligation.scheme,
    weight: obligation.weight,
    action_kind: obligation.action.kind,
    action_words: obligation.action.words,
    ...toDateColumns(obligation.outcome),
    suspended: toMultirange(obligation.explanation.suspended ?? []),
    explanation: JSON.stringify(mapDays(obligation.explanation, formatDay)),
  };
}

function toDateColumns(outcome: DueOutcome) {
  switch (outcome.kind) {
    case 'undated':
      return {
        overdue_after: NO_DATE,
        due_on: NO_DATE,
        due_from: NO_DATE,
        expires_on: null,
        replace_by: null,
        latest_permitted_on: null,
        windows: '[]',
      };
    case 'dated':
      return {
        overdue_after: formatDay(outcome.overdueAfter),
        due_on: formatDay(outcome.dueOn),
        due_from: formatDay(outcome.dueFrom),
        expires_on: optional(outcome.expiresOn),
        replace_by: optional(outcome.replaceBy),
        latest_permitted_on: optional(outcome.latestPermittedOn),
        windows: JSON.stringify(
          outcome.windows.map(({ opens, closes }) => ({ opens: formatDay(opens), closes: formatDay(closes) })),
        ),
      };
  }
}

/** In the one way in which PostgreSQL writes it, so that what is stored can be compared: in order, the end left out. */
function toMultirange(spans: readonly Suspended[]): string {
  const ranges = spans.map(
    ({ from, until }) => `[${formatDay(from)},${until === null ? '' : formatDay(addDays(until, 1))})`,
  );
  return `{${ranges.join(',')}}`;
}

const optional = (day: Day | undefined) => (day === undefined ? null : formatDay(day));

export function toObligation(row: Selectable<ObligationTable>): Obligation {
  const explanation = mapDays(row.explanation as Explained<string>, dayOfText);
  return {
    ruleId: row.rule_id,
    duty: row.duty,
    scheme: row.scheme as SchemeId,
    weight: row.weight as Weight,
    action: { kind: row.action_kind as ActionKind, words: row.action_words },
    outcome: toOutcome(row, explanation),
    explanation,
  };
}

function toOutcome(row: Selectable<ObligationTable>, { missing }: Explanation): DueOutcome {
  if (row.overdue_after === NO_DATE) return { kind: 'undated', missing };
  return {
    kind: 'dated',
    dueFrom: dayOfText(row.due_from),
    dueOn: dayOfText(row.due_on),
    overdueAfter: dayOfText(row.overdue_after),
    ...(row.expires_on && { expiresOn: dayOfText(row.expires_on) }),
    ...(row.replace_by && { replaceBy: dayOfText(row.replace_by) }),
    ...(row.latest_permitted_on && { latestPermittedOn: dayOfText(row.latest_permitted_on) }),
    windows: (row.windows as { opens: string; closes: string }[]).map(({ opens, closes }) => ({
      opens: dayOfText(opens),
      closes: dayOfText(closes),
    })),
  };
}

type Limit<On> = Omit<CountedLimit, 'on'> & { readonly on: On | null };
type Span<On> = Omit<Suspended, 'from' | 'until'> & { readonly from: On; readonly until: On | null };
type Explained<On> = Omit<Explanation, 'binds' | 'alsoCounted' | 'suspended'> & {
  readonly binds: Limit<On> | null;
  readonly alsoCounted: readonly Limit<On>[];
  readonly suspended?: readonly Span<On>[];
};

function mapDays<From, To>(explained: Explained<From>, change: (on: From) => To): Explained<To> {
  const { suspended, ...explanation } = explained;
  const day = (on: From | null) => (on === null ? null : change(on));
  const limit = (each: Limit<From>): Limit<To> => ({ ...each, on: day(each.on) });
  return {
    ...explanation,
    binds: explanation.binds && limit(explanation.binds),
    alsoCounted: explanation.alsoCounted.map(limit),
    ...(suspended && {
      suspended: suspended.map(({ from, until, ...span }) => ({ ...span, from: change(from), until: day(until) })),
    }),
  };
}
