/** A line of the due list as the API shows it. */
import type { DueRow } from '@garboard/contract/due-list/due-list.ts';
import type { DueEntry } from '@garboard/db/due-list/due-entry.ts';
import { type Day, daysBetween, formatDay } from '@garboard/domain/calendar/day.ts';
import { standsOn } from '@garboard/domain/due-list/standing.ts';
import { sourceOf } from '@garboard/domain/safety-notice/notice.ts';
import { presentSource, presentSuspension } from '../item/present-obligation.ts';

export function presentDue({ vessel, item, obligation }: DueEntry, asOf: Day): DueRow {
  const { outcome, explanation } = obligation;
  return {
    source: sourceOf(obligation.ruleId),
    vessel: { id: vessel.id, name: vessel.name },
    item: {
      id: item.id,
      kind: item.kind,
      label: item.label,
      ...(item.zone && { zone: item.zone }),
      quantity: item.quantity,
    },
    ruleId: obligation.ruleId,
    duty: obligation.duty,
    scheme: obligation.scheme,
    weight: obligation.weight,
    action: { kind: obligation.action.kind, words: obligation.action.words },
    ...(outcome.kind === 'dated' && {
      dueOn: formatDay(outcome.dueOn),
      overdueAfter: formatDay(outcome.overdueAfter),
      days: daysBetween(asOf, outcome.overdueAfter),
    }),
    standing: standsOn(obligation, asOf).standing,
    ...presentSuspension(obligation, asOf),
    sentence: explanation.sentence,
    reference: presentSource(explanation.source),
  };
}
