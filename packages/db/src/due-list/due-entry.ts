/** One line of the due list, and what can be asked of the list. */
import { type Day, formatDay } from '@garboard/domain/calendar/day.ts';
import type { CountedAs, Standing } from '@garboard/domain/due-list/standing.ts';
import type { MatterSaid, MatterSource } from '@garboard/domain/finding/matter.ts';
import type { Obligation } from '@garboard/domain/item/obligation.ts';
import type { Cut } from '@garboard/domain/item/work-out-obligations.ts';
import type { SchemeId, Weight } from '@garboard/domain/rule/scheme.ts';
import type { DueSource } from '@garboard/domain/safety-notice/notice.ts';
import { NO_DATE } from '../item/obligation-record.ts';

export type DueEntry = {
  readonly vessel: { readonly id: string; readonly name: string };
  readonly item: {
    readonly id: string;
    readonly kind: string;
    readonly label: string;
    readonly zone: string | null;
    readonly quantity: number;
  };
  readonly obligation: Obligation;
};

/** What waits for somebody besides what rules ask: a line of the same list. */
export type MatterEntry = {
  readonly vessel: DueEntry['vessel'];
  readonly matter: MatterSaid & { readonly id: string };
  /** ISO day, or `infinity`. */
  readonly dueFrom: string;
};
export type DueLine = DueEntry | MatterEntry;

/**
 * Without `standing`: everything that has a date. What has none is asked for as `unknown`. What is suspended
 * on the day is a group of its own as well, that none of the others shows.
 */
export type DueFilter = {
  readonly vesselId?: string;
  readonly kind?: string;
  readonly scheme?: SchemeId;
  readonly weight?: Weight;
  readonly source?: DueSource | MatterSource;
  readonly standing?: Standing;
  readonly suspended?: true;
  /** Of no meaning for what has no date. */
  readonly horizonDays?: number;
};

/** The place of a line in the list's order. `overdueAfter` is ISO text or `infinity`; a matter has its own id and no rule. */
export type DueKey = {
  readonly overdueAfter: string;
  readonly itemId: string;
  readonly ruleId: string;
  readonly duty: string;
};

export function dueKeyOf(line: DueLine): DueKey {
  if ('matter' in line)
    return { overdueAfter: line.matter.on ?? NO_DATE, itemId: line.matter.id, ruleId: '', duty: '' };
  const { item, obligation } = line;
  const { outcome, ruleId, duty } = obligation;
  return {
    overdueAfter: outcome.kind === 'dated' ? formatDay(outcome.overdueAfter) : NO_DATE,
    itemId: item.id,
    ruleId,
    duty,
  };
}

/** `day` is the day asked about; `cut` makes the answer be worked out anew from the facts as they stood. */
export type DueQuestion = {
  readonly day: Day;
  readonly cut?: Cut;
  readonly filter: DueFilter;
  readonly limit: number;
  readonly after?: DueKey;
};

export type CountedByWeight = Readonly<Record<Weight, number>>;
export type CountedStandings = Readonly<Record<CountedAs, CountedByWeight>>;
export type Totals = { readonly counts: CountedStandings; readonly vesselsOverdue: number };
/** Matters, counted apart: no rule stands behind them. */
export type MatterCounts = Readonly<Record<Standing, number>>;
