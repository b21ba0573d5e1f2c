/** A finding as its entries make it: the one reading of them, so that it can be dropped and read again. */
import type { Seen } from './codes.ts';
import type { Entry, IsoDay, Particulars, UrgencySaid } from './entry.ts';
import type { Remedy } from './remedy.ts';
import { remedyAfter } from './remedy-after.ts';

export type OwnerAnswer = {
  readonly yes: boolean;
  readonly name: string;
  readonly on: IsoDay;
  readonly offer: string;
};

export type Finding = Particulars &
  UrgencySaid & {
    /** The day on which that urgency was said. */
    readonly urgencySince: IsoDay;
    readonly firstSeenOn: IsoDay;
    readonly lastSeenOn: IsoDay;
    readonly lastSeen: 'new' | Seen;
    /** What is to be done about it, as last proposed, planned or reported. */
    readonly work: string | null;
    /** What the owner last said to an estimate; absent where nobody was asked, or nothing was answered. */
    readonly owner?: OwnerAnswer;
    readonly remedy: Remedy;
  };

/** The finding that the entries come to. Throws where the first of them does not say what was found. */
export function readFinding(entries: readonly Entry[]): Finding {
  const [first, ...rest] = entries;
  if (first?.step !== 'found') throw new Error('a finding begins with what was found');
  return rest.reduce(readEntry, begin(first));
}

function begin({ on, ...first }: Entry & { step: 'found' }): Finding {
  const { zone, itemId, what, hazard, trade, estimate, responsible, ruleId, limit, urgency, urgentBy } = first;
  return {
    ...{ zone, itemId, what, hazard, trade, estimate, responsible, ruleId, limit },
    ...{ urgency, urgentBy, urgencySince: on, firstSeenOn: on, lastSeenOn: on },
    ...{ lastSeen: 'new', work: null, remedy: { state: 'found' } },
  };
}

/** The finding after one more entry, which must be one that `judgeStep` lets through. */
export function readEntry(finding: Finding, entry: Entry): Finding {
  const remedy = remedyAfter(finding, entry);
  switch (entry.step) {
    case 'seen':
      return { ...finding, ...sighted(finding, entry), remedy };
    case 'amended':
      return { ...finding, ...entry.change, ...said(finding, entry.said, entry.on), remedy };
    case 'proposed':
      return {
        ...finding,
        work: entry.work,
        trade: entry.trade ?? finding.trade,
        estimate: entry.estimate ?? finding.estimate,
        remedy,
      };
    case 'planned':
      return {
        ...finding,
        work: entry.work ?? finding.work,
        trade: entry.trade ?? finding.trade,
        responsible: entry.responsible ?? finding.responsible,
        remedy,
      };
    case 'reported_done':
      return { ...finding, work: entry.work, remedy };
    case 'owner_answered':
      return { ...finding, owner: { yes: entry.yes, name: entry.name, on: entry.on, offer: entry.offer }, remedy };
    case 'reopened':
      return { ...finding, urgencySince: entry.on, urgentBy: null, remedy };
    case 'found':
    case 'begun':
    case 'sent_back':
    case 'verified':
    case 'deferred':
    case 'accepted':
    case 'entered_in_error':
    case 'merged_into':
    case 'took_in':
    case 'split_off':
    case 'split_from':
      return { ...finding, remedy };
  }
}

/** A sighting that did not look says nothing new of it. Seen again after its end, its time runs from that day. */
function sighted(before: Finding, { seen, on, said: told }: Entry & { step: 'seen' }): Partial<Finding> {
  const { remedy, lastSeenOn } = before;
  if (seen === 'not_examined') return {};
  const isBack = remedy.state === 'verified' && seen !== 'gone';
  return {
    lastSeen: seen,
    lastSeenOn: on > lastSeenOn ? on : lastSeenOn,
    ...(isBack && { urgencySince: on, urgentBy: null }),
    ...said(before, told, on),
  };
}

/** The same urgency said again moves no day, unless it names one of its own. */
function said({ urgency, urgentBy }: Finding, told: UrgencySaid | null, on: IsoDay): Partial<Finding> | null {
  if (!told || (told.urgency === urgency && (told.urgentBy === null || told.urgentBy === urgentBy))) return null;
  return { urgency: told.urgency, urgentBy: told.urgentBy, urgencySince: on };
}
