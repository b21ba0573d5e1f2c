/**
 * What the explaining engine said, reckoned a second time by the compiled rules. The two share the rules, the
 * calendar and what the words mean, and nothing of how a date is come to: a slip in one is not in the other.
 */
import type { Obligation } from '../../item/obligation.ts';
import type { ItemHistory, VesselHistory } from '../../item/work-out-obligations.ts';
import { NO_DAY, weightCode } from './codes.ts';
import { planAsAt } from './compile-plan.ts';
import { type Dates, emptyDates } from './dates.ts';
import { columnFiller } from './fill-columns.ts';
import { asStored } from './from-history.ts';
import type { Plan } from './plan.ts';
import { workOutDates } from './work-out-dates.ts';

export type Reckoned = { readonly history: ItemHistory; readonly obligations: readonly Obligation[] };

/**
 * How many of a vessel's obligations are not found again with the same days, or are found and were not said. What
 * a safety notice asks comes from no rule, and is left out.
 */
export function countUnconfirmed(items: readonly Reckoned[], vessel: VesselHistory): number {
  const plan = planAsAt(vessel.ownRules ?? [], {});
  const filler = columnFiller(plan);
  const number = filler.addVessel(vessel);
  for (const { history } of items) filler.addItem(asStored(history, number));
  const dates = emptyDates();
  workOutDates(plan, filler.columns, {}, dates);
  const found = daysFound(plan, dates);
  const said = new Map(
    items.flatMap(({ obligations }, item) => obligations.filter(isOfRule).map((each) => daysSaid(item, each))),
  );
  return new Set([...said.keys(), ...found.keys()].filter((name) => said.get(name) !== found.get(name))).size;
}

const isOfRule = ({ ruleId }: Obligation) => !ruleId.startsWith('notice:');

type Named = readonly [name: string, days: string];

function daysSaid(item: number, { ruleId, duty, weight, outcome }: Obligation): Named {
  const dated = outcome.kind === 'dated' ? outcome : null;
  const days = [dated?.dueOn, dated?.overdueAfter, dated?.expiresOn, dated?.replaceBy, dated?.latestPermittedOn];
  return [`${item} ${ruleId} ${duty} ${weightCode(weight)}`, days.map((day) => day ?? NO_DAY).join(' ')];
}

function daysFound({ duties }: Plan, { count, rows }: Dates): Map<string, string> {
  const { dueOn, overdueAfter, expiresOn, replaceBy, latestPermittedOn } = rows;
  const days = [dueOn, overdueAfter, expiresOn, replaceBy, latestPermittedOn];
  return new Map(
    Array.from({ length: count }, (_, row): Named => {
      const { rule, duty } = duties[rows.duty[row] as number] as Plan['duties'][number];
      const named = `${duty.id}${rows.tightened[row] === 1 ? '.tightened' : ''}`;
      const name = `${rows.item[row]} ${rule.id} ${named} ${rows.weight[row]}`;
      return [name, days.map((column) => column[row]).join(' ')];
    }),
  );
}
