/** A finding as the API shows it, on the day that it is at the vessel's place. */
import type { Finding, FindingEntry } from '@garboard/contract/finding/finding.ts';
import type { FindingView } from '@garboard/db/finding/list-findings.ts';
import { formatDay } from '@garboard/domain/calendar/day.ts';
import { dayInZone } from '@garboard/domain/calendar/day-in-zone.ts';
import type { Entry, Estimate, Evidence } from '@garboard/domain/finding/entry.ts';
import { standingOf } from '@garboard/domain/finding/matter.ts';
import { NEXT } from '@garboard/domain/finding/next-state.ts';
import type { Remedy } from '@garboard/domain/finding/remedy.ts';
import { readsAs } from '@garboard/domain/finding/words.ts';
import { withoutNulls } from '../request/without-nulls.ts';
import { fromMinor } from '../vessel/money.ts';

export function presentFinding(view: FindingView, now: Date): Finding {
  const { finding, item, due } = view;
  const { zone, what, hazard, urgency, urgencySince, firstSeenOn, lastSeenOn, lastSeen, remedy } = finding;
  return {
    ...withoutNulls({
      trade: finding.trade,
      estimate: finding.estimate && presentEstimate(finding.estimate),
      responsible: finding.responsible,
      ruleId: finding.ruleId,
      limit: finding.limit && { on: finding.limit.on, source: finding.limit.source },
      urgentBy: finding.urgentBy,
      work: finding.work,
      item: item && { id: item.id, kind: item.kind, label: item.label },
      due: due && presentDueOf(due, formatDay(dayInZone(now, view.timeZone))),
    }),
    ...{ id: view.id, number: view.number, vessel: { id: view.vesselId, name: view.vesselName } },
    ...{ zone, what, hazard, urgency, urgencySince, firstSeenOn, lastSeenOn, lastSeen },
    ...(finding.owner && { ownerSaid: { ...finding.owner } }),
    remedy: presentRemedy(remedy),
    reads: readsAs(finding),
    mayBe: Object.keys(NEXT[remedy.state]),
  };
}

const presentEstimate = ({ author, ...money }: Estimate) => ({ ...fromMinor(money), author });

type DueOf = NonNullable<Finding['due']>;

function presentDueOf({ source, on, from, because }: NonNullable<FindingView['due']>, asOf: string): DueOf {
  const standing = standingOf(on, from, asOf);
  if (on === null) return { because, standing };
  return { source: source === 'deferral' ? 'deferral' : 'finding', on, because, standing };
}

function presentRemedy(remedy: Remedy): Finding['remedy'] {
  switch (remedy.state) {
    case 'found':
    case 'proposed':
    case 'in_hand':
    case 'entered_in_error':
      return { state: remedy.state };
    case 'planned':
      return { state: remedy.state, ...(remedy.forDay !== null && { forDay: remedy.forDay }) };
    case 'reported_done':
      return { state: remedy.state, doneOn: remedy.doneOn };
    case 'deferred':
    case 'accepted':
      return { state: remedy.state, reviewOn: remedy.reviewOn, responsible: remedy.responsible };
    case 'verified':
      return { state: remedy.state, endedOn: remedy.on, independent: remedy.independent };
    case 'merged':
      return { state: remedy.state, into: remedy.into };
  }
}

export function presentEntry({ id, by, on, recordedAt, step, ...said }: Entry): FindingEntry {
  const { visitId, evidence, ...words } = { visitId: null, evidence: [], ...said } as {
    visitId: string | null;
    evidence: readonly Evidence[];
  };
  return {
    ...{ id, step, on, recordedAt, recordedBy: by },
    ...(visitId !== null && { visitId }),
    said: presentSaid(words),
    evidence: evidence.map(({ kind, words, evidenceId }) => ({
      kind,
      words,
      ...(evidenceId !== null && { evidenceId }),
    })),
  };
}

/** What was written, without what was left empty; money as text, as everywhere. */
function presentSaid(words: object): Record<string, unknown> {
  const kept = Object.entries(words).filter(([, value]) => value !== null);
  return Object.fromEntries(kept.map(([name, value]) => [name, name === 'estimate' ? presentEstimate(value) : value]));
}
