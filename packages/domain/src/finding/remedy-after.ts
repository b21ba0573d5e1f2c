/** Where an entry leads the remedy. What may lead where is `next-state.ts`; this says what is kept of it. */
import type { Seen } from './codes.ts';
import type { Entry } from './entry.ts';
import type { Finding } from './finding.ts';
import { type Move, NEXT } from './next-state.ts';
import type { Remedy } from './remedy.ts';

export function remedyAfter(finding: Finding, entry: Entry): Remedy {
  switch (entry.step) {
    case 'seen':
      return notLeft(afterSighting(finding.remedy, entry), entry.said ?? finding);
    case 'amended':
      return notLeft(finding.remedy, entry.said ?? finding);
    case 'proposed':
      return { state: 'proposed' };
    case 'planned':
      return { state: 'planned', forDay: entry.forDay };
    case 'begun':
    case 'sent_back':
      return { state: 'in_hand' };
    case 'reported_done':
      return { state: 'reported_done', reportedBy: entry.by, byAnother: entry.doneBy !== null, doneOn: entry.doneOn };
    case 'verified':
      return { state: 'verified', on: entry.on, independent: entry.independent };
    case 'deferred':
    case 'accepted':
      return { state: entry.step, reviewOn: entry.reviewOn, responsible: entry.responsible };
    case 'entered_in_error':
      return { state: 'entered_in_error' };
    case 'reopened':
      return { state: 'found' };
    case 'merged_into':
      return { state: 'merged', into: entry.findingId };
    case 'found':
    case 'owner_answered':
    case 'took_in':
    case 'split_off':
    case 'split_from':
      return finding.remedy;
  }
}

function afterSighting(remedy: Remedy, { seen, on }: Entry & { step: 'seen' }): Remedy {
  const move = moveOfSighting(seen);
  const next = move && NEXT[remedy.state][move];
  if (!next || next === remedy.state) return remedy;
  if (next === 'verified') return { state: 'verified', on, independent: true };
  return next === 'found' || next === 'in_hand' ? { state: next } : remedy;
}

/** What must be dealt with before she is used again cannot be left for later. */
function notLeft(remedy: Remedy, { urgency }: Pick<Finding, 'urgency'>): Remedy {
  const isLeft = remedy.state === 'deferred' || remedy.state === 'accepted';
  return isLeft && urgency === 'before_use' ? { state: 'found' } : remedy;
}

/** The move of a sighting in the table; `null` where nobody looked. */
export function moveOfSighting(seen: Seen): Move | null {
  switch (seen) {
    case 'gone':
      return 'seen_gone';
    case 'worse':
      return 'seen_worse';
    case 'unchanged':
    case 'better':
      return 'seen_still_there';
    case 'not_examined':
      return null;
  }
}
