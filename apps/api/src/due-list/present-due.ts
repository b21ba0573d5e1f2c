/** A line of the due list as the API shows it. */
import type { DueMatter, DueRow } from '@garboard/contract/due-list/due-list.ts';
import type { DueEntry, DueLine, MatterEntry } from '@garboard/db/due-list/due-entry.ts';
import { type Day, dayOfText, daysBetween, formatDay } from '@garboard/domain/calendar/day.ts';
import { standsOn } from '@garboard/domain/due-list/standing.ts';
import type { Trade, Urgency } from '@garboard/domain/finding/codes.ts';
import { standingOf } from '@garboard/domain/finding/matter.ts';
import { sourceOf } from '@garboard/domain/safety-notice/notice.ts';
import { presentSource, presentSuspension } from '../item/present-obligation.ts';
import { withoutNulls } from '../request/without-nulls.ts';

export const presentLine = (line: DueLine, asOf: Day): DueRow | DueMatter =>
  'matter' in line ? presentMatter(line, asOf) : presentDue(line, asOf);

function presentMatter({ vessel, matter, dueFrom }: MatterEntry, asOf: Day): DueMatter {
  const { id, source, zone, label, action, sentence, on } = matter;
  return {
    ...{ source, id, vessel: { id: vessel.id, name: vessel.name }, zone, label, action: { words: action }, sentence },
    ...withoutNulls({
      urgency: matter.urgency as Urgency | null,
      trade: matter.trade as Trade | null,
      responsible: matter.responsible,
    }),
    ...(on !== null && { dueOn: on, overdueAfter: on, days: daysBetween(asOf, dayOfText(on)) }),
    standing: standingOf(on, dueFrom, formatDay(asOf)),
  };
}

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
