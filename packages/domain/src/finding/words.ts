/** How a finding stands and what is to be done about it, in the one wording that every page, list and export uses. */
import type { Finding } from './finding.ts';

/** Closed without a second pair of eyes says so, always. */
export function readsAs({ remedy }: Pick<Finding, 'remedy'>): string {
  switch (remedy.state) {
    case 'found':
      return 'Found; nothing decided yet';
    case 'proposed':
      return 'Work proposed';
    case 'planned':
      return remedy.forDay === null ? 'Planned, without a day' : `Planned for ${remedy.forDay}`;
    case 'in_hand':
      return 'In hand';
    case 'reported_done':
      return `Reported done on ${remedy.doneOn}; nobody else has looked yet`;
    case 'deferred':
      return `Put off; ${remedy.responsible} looks at it again on ${remedy.reviewOn}`;
    case 'accepted':
      return `Accepted as it is by ${remedy.responsible}; looked at again on ${remedy.reviewOn}`;
    case 'verified':
      return remedy.independent ? `Verified on ${remedy.on}` : `Closed on ${remedy.on}, not independently checked`;
    case 'entered_in_error':
      return 'Entered in error';
    case 'merged':
      return 'Merged into another finding';
  }
}

/** What somebody is to do next. */
export function nextToDo({ remedy, work, urgency }: Pick<Finding, 'remedy' | 'work' | 'urgency'>): string {
  switch (remedy.state) {
    case 'found':
      return urgency === 'observe' ? 'Look at it again' : 'Decide what is to be done';
    case 'proposed':
      return `Decide on: ${work}`;
    case 'planned':
    case 'in_hand':
      return work ?? 'Put it right';
    case 'reported_done':
      return 'Look, and verify the work';
    case 'deferred':
    case 'accepted':
      return 'Look at it again, and decide anew';
    case 'verified':
    case 'entered_in_error':
    case 'merged':
      return 'Nothing';
  }
}

/** What an owner is asked to say yes or no to: the work and what it may cost, as they stand. `null`: nobody has said. */
export function offerOf({ what, work, estimate }: Pick<Finding, 'what' | 'work' | 'estimate'>): string | null {
  if (estimate === null) return null;
  const amount = `${(estimate.minor / 100).toFixed(2)} ${estimate.currency}`;
  return `${what}: ${work ?? 'put it right'}, about ${amount}, says ${estimate.author}.`;
}
