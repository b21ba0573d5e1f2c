/** A vessel's line on the fleet's horizon. */
import type { FleetRow } from '@garboard/contract/fleet/fleet.ts';
import type { DueEntry, MatterEntry } from '@garboard/db/due-list/due-entry.ts';
import type { FleetVessel } from '@garboard/db/due-list/read-fleet.ts';
import { type Day, formatDay } from '@garboard/domain/calendar/day.ts';
import { countedAs } from '@garboard/domain/due-list/standing.ts';
import { URGENCIES, type Urgency } from '@garboard/domain/finding/codes.ts';
import { standingOf } from '@garboard/domain/finding/matter.ts';
import { findItemKind } from '@garboard/domain/item/item-kind.ts';
import type { ActionKind } from '@garboard/domain/rule/rule.ts';
import { isAshore, isLaidUp, situationSpans } from './situation-spans.ts';

export type Span = { readonly asOf: Day; readonly until: Day };
type Mark = FleetRow['marks'][number];
type Dated = { readonly entry: DueEntry; readonly on: Day; readonly standing: 'overdue' | 'due' | 'in_date' };

export function presentFleetRow(
  { vessel, counts, entries, matters, situations, haulOuts }: FleetVessel,
  { asOf, until }: Span,
): FleetRow {
  const span = { asOf: formatDay(asOf), until: formatDay(until) };
  const dated = entries.flatMap((entry) => datedOn(entry, asOf));
  const [oldest] = dated.filter(({ standing }) => standing === 'overdue');
  const ahead = dated.filter(({ standing }) => standing !== 'overdue');
  return {
    vesselId: vessel.id,
    name: vessel.name,
    ...(vessel.type && { type: vessel.type }),
    ...(vessel.lengthOverallM && { lengthOverallM: vessel.lengthOverallM }),
    counts,
    findings: byUrgency(matters),
    matters: byStanding(matters, span.asOf),
    ...(oldest && { oldestOverdueAfter: formatDay(oldest.on) }),
    ...(ahead[0] && { nextOverdueAfter: formatDay(ahead[0].on) }),
    laidUp: situationSpans(situations, isLaidUp, span),
    ashore: situationSpans(situations, isAshore, span),
    haulOuts: haulOuts.filter(({ on }) => on >= span.asOf && on <= span.until),
    marks: marksOf(ahead.filter(({ on }) => on <= until)),
  };
}

/** A finding that was put off or accepted waits as its review, and is open all the same. */
function byUrgency(matters: readonly MatterEntry[]): FleetRow['findings'] {
  const open = matters.filter(({ matter: { source } }) => source === 'finding' || source === 'deferral');
  const count = (asked: Urgency) => open.filter(({ matter: { urgency } }) => urgency === asked).length;
  return Object.fromEntries(URGENCIES.map((urgency) => [urgency, count(urgency)])) as FleetRow['findings'];
}

function byStanding(matters: readonly MatterEntry[], day: string): FleetRow['matters'] {
  const standings = matters.map(({ matter, dueFrom }) => standingOf(matter.on, dueFrom, day));
  const count = (asked: (typeof standings)[number]) => standings.filter((standing) => standing === asked).length;
  return { overdue: count('overdue'), due: count('due'), in_date: count('in_date'), unknown: count('unknown') };
}

/** What is suspended on the day is not asked for: it is counted, and has no mark. */
function datedOn(entry: DueEntry, asOf: Day): Dated[] {
  const { outcome } = entry.obligation;
  const standing = countedAs(entry.obligation, asOf);
  if (outcome.kind === 'undated' || standing === 'unknown' || standing === 'suspended') return [];
  return [{ entry, on: outcome.overdueAfter, standing }];
}

/** What falls on one day, is of one sort and stands alike is one mark. */
function marksOf(ahead: readonly Dated[]): Mark[] {
  const groups = Map.groupBy(ahead, ({ entry, on, standing }) => `${on} ${markOf(entry)} ${standing}`);
  return [...groups.values()].flatMap((group) => {
    const [first] = group;
    if (!first || first.standing === 'overdue') return [];
    const { entry, on, standing } = first;
    return [{ on: formatDay(on), mark: markOf(entry), standing, things: group.map(thingOf) }];
  });
}

function thingOf({ entry: { item, obligation } }: Dated): Mark['things'][number] {
  return {
    itemId: item.id,
    ruleId: obligation.ruleId,
    duty: obligation.duty,
    label: item.label,
    words: obligation.action.words,
    status: obligation.explanation.source.status,
  };
}

/** What is done about a document is about the document, whatever the act is called. */
function markOf({ item, obligation }: DueEntry): Mark['mark'] {
  return findItemKind(item.kind)?.itemClass === 'documents' ? 'document' : markOfAction(obligation.action.kind);
}

function markOfAction(action: ActionKind): Mark['mark'] {
  switch (action) {
    case 'service':
    case 'inspect':
    case 'test':
    case 'overhaul':
    case 'stop_using':
    case 'return':
      return 'service';
    case 'replace':
    case 'withdraw':
      return 'replace';
  }
}
