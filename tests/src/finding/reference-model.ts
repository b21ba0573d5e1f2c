/**
 * A second, small reading of how a finding lives, written from the description alone: a list of sentences, each of
 * which says when a command is refused. It shares nothing with the domain.
 */
export type Who = 'yard' | 'manager' | 'other_manager' | 'surveyor';
export type Command =
  | 'propose'
  | 'plan'
  | 'begin'
  | 'report_done'
  | 'report_done_by_another'
  | 'send_back'
  | 'verify'
  | 'verify_without_evidence'
  | 'defer'
  | 'accept'
  | 'enter_in_error'
  | 'reopen'
  | 'merge'
  | 'see_same'
  | 'see_worse'
  | 'see_gone'
  | 'not_examined'
  | 'raise'
  | 'lower_on_paper'
  | 'lower_by_sight';
export const COMMANDS: readonly Command[] = [
  'propose',
  'plan',
  'begin',
  'report_done',
  'report_done_by_another',
  'send_back',
  'verify',
  'verify_without_evidence',
  'defer',
  'accept',
  'enter_in_error',
  'reopen',
  'merge',
  'see_same',
  'see_worse',
  'see_gone',
  'not_examined',
  'raise',
  'lower_on_paper',
  'lower_by_sight',
];

export type Model = { state: string; urgent: boolean; doer: Who | null };
export const begun = (): Model => ({ state: 'found', urgent: false, doer: null });
export const MODEL_STATES = [
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
];

const ENDS = ['verified', 'entered_in_error', 'merged'];
const WAITING = ['found', 'proposed', 'planned', 'deferred', 'accepted'];
const mayVerify = (who: Who) => who !== 'yard';
const mayPutOff = (who: Who) => who === 'manager' || who === 'other_manager';

type Answer = { readonly status: 200 | 403 | 409 | 422; readonly next: Model };

export function predict(model: Model, command: Command, who: Who): Answer {
  const no = (status: 403 | 409 | 422): Answer => ({ status, next: model });
  const to = (state: string, more: Partial<Model> = {}): Answer => ({
    status: 200,
    next: { ...model, state, ...more },
  });
  const { state, urgent, doer } = model;
  const waiting = WAITING.includes(state);
  const open = !ENDS.includes(state);
  switch (command) {
    case 'propose':
      return waiting ? to('proposed') : no(409);
    case 'plan':
      return waiting || state === 'in_hand' ? to('planned') : no(409);
    case 'begin':
      return waiting ? to('in_hand') : no(409);
    case 'report_done':
      return waiting || state === 'in_hand' ? to('reported_done', { doer: who }) : no(409);
    case 'report_done_by_another':
      return waiting || state === 'in_hand' ? to('reported_done', { doer: null }) : no(409);
    case 'send_back':
      if (!mayVerify(who)) return no(403);
      return state === 'reported_done' ? to('in_hand') : no(409);
    case 'verify':
      if (!mayVerify(who)) return no(403);
      if (state !== 'reported_done') return no(409);
      return doer === who ? no(422) : to('verified');
    case 'verify_without_evidence':
      if (!mayVerify(who)) return no(403);
      return state === 'reported_done' ? no(422) : no(409);
    case 'defer':
      if (!mayPutOff(who)) return no(403);
      if (!waiting && state !== 'in_hand') return no(409);
      return urgent ? no(422) : to('deferred');
    case 'accept':
      if (!mayPutOff(who)) return no(403);
      if (!waiting) return no(409);
      return urgent ? no(422) : to('accepted');
    case 'enter_in_error':
      if (!mayVerify(who)) return no(403);
      return open ? to('entered_in_error') : no(409);
    case 'reopen':
      if (!mayVerify(who)) return no(403);
      return open ? no(409) : to('found');
    case 'merge':
      return waiting || state === 'in_hand' ? to('merged') : no(409);
    case 'see_same':
      return seenAgain(model, to, no, false);
    case 'see_worse':
      return seenAgain(model, to, no, true);
    case 'see_gone':
      if (state === 'entered_in_error' || state === 'merged') return no(409);
      if (state === 'verified') return to('verified');
      if (!mayVerify(who)) return no(422);
      return state === 'reported_done' && doer === who ? no(422) : to('verified');
    case 'not_examined':
      return open ? to(state) : no(409);
    case 'raise':
      if (!open) return no(409);
      return to(state === 'deferred' || state === 'accepted' ? 'found' : state, { urgent: true });
    case 'lower_on_paper':
      if (!open) return no(409);
      return urgent ? no(422) : to(state);
    case 'lower_by_sight': {
      if (state === 'entered_in_error' || state === 'merged') return no(409);
      if (urgent && who !== 'surveyor') return no(422);
      const seen = seenAgain({ ...model, urgent: false }, to, no, false);
      return { ...seen, next: { ...seen.next, urgent: false } };
    }
  }
}

function seenAgain(
  { state, urgent }: Model,
  to: (state: string, more?: Partial<Model>) => Answer,
  no: (status: 409) => Answer,
  worse: boolean,
): Answer {
  if (state === 'entered_in_error' || state === 'merged') return no(409);
  if (state === 'verified') return to('found');
  if (state === 'reported_done') return to('in_hand');
  const left = state === 'deferred' || state === 'accepted';
  return left && (worse || urgent) ? to('found') : to(state);
}
