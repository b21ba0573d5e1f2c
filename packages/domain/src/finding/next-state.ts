/**
 * The remedy's states and the steps between them: the one table. What it does not name cannot happen. The
 * picture in the documentation is drawn from it.
 */
import type { StepCode } from './entry.ts';

/** `found`: nothing is decided yet. The last three end a finding; the others leave it open. */
export const STATES = [
  'found',
  'proposed',
  'planned',
  'in_hand',
  'reported_done',
  'deferred',
  'accepted',
  'verified',
  'entered_in_error',
  'merged',
] as const;
export type State = (typeof STATES)[number];

const ENDED = ['verified', 'entered_in_error', 'merged'] as const satisfies readonly State[];
export const isOpen = (state: State): boolean => !(ENDED as readonly State[]).includes(state);

/** Steps that somebody takes about the remedy; a sighting is one of two, by what was seen. */
export type Move =
  | Exclude<StepCode, 'found' | 'seen' | 'amended' | 'owner_answered' | 'took_in' | 'split_off' | 'split_from'>
  | 'seen_gone'
  | 'seen_still_there'
  | 'seen_worse';
type Moves = Partial<Record<Move, State>>;

const DECIDED: Moves = {
  proposed: 'proposed',
  planned: 'planned',
  begun: 'in_hand',
  reported_done: 'reported_done',
  deferred: 'deferred',
  accepted: 'accepted',
  entered_in_error: 'entered_in_error',
  merged_into: 'merged',
  seen_gone: 'verified',
};

/** Something seen worse than it was is not what somebody agreed to leave: it waits for a decision again. */
const PUT_OFF: Moves = { ...DECIDED, seen_worse: 'found' };

export const NEXT: Readonly<Record<State, Moves>> = {
  found: { ...DECIDED, seen_worse: 'found', seen_still_there: 'found' },
  proposed: { ...DECIDED, seen_worse: 'proposed', seen_still_there: 'proposed' },
  planned: { ...DECIDED, seen_worse: 'planned', seen_still_there: 'planned' },
  in_hand: {
    planned: 'planned',
    reported_done: 'reported_done',
    deferred: 'deferred',
    entered_in_error: 'entered_in_error',
    merged_into: 'merged',
    seen_gone: 'verified',
    seen_worse: 'in_hand',
    seen_still_there: 'in_hand',
  },
  reported_done: {
    sent_back: 'in_hand',
    verified: 'verified',
    entered_in_error: 'entered_in_error',
    seen_gone: 'verified',
    seen_worse: 'in_hand',
    seen_still_there: 'in_hand',
  },
  deferred: { ...PUT_OFF, seen_still_there: 'deferred' },
  accepted: { ...PUT_OFF, seen_still_there: 'accepted' },
  verified: { reopened: 'found', seen_worse: 'found', seen_still_there: 'found', seen_gone: 'verified' },
  entered_in_error: { reopened: 'found' },
  merged: { reopened: 'found' },
};
