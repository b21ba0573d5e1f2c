/** What an action answers with: the value, or one of a closed list of expected failures. Faults are thrown. */

export type Fault = { readonly pointer: string; readonly detail: string };

export type Failure =
  | { readonly kind: 'forbidden' }
  | { readonly kind: 'not_found' }
  /** The thing was changed by somebody else since it was read. */
  | { readonly kind: 'stale'; readonly version: number }
  | { readonly kind: 'invalid'; readonly errors: readonly Fault[] }
  | { readonly kind: 'conflict'; readonly detail: string }
  | { readonly kind: 'key_reused' };

export type FailureKind = Failure['kind'];

export type Refused<K extends FailureKind> = {
  readonly ok: false;
  readonly failure: Extract<Failure, { readonly kind: K }>;
};

/**
 * `replayed`: the value of an earlier request with the same key; nothing was done again. Values are plain JSON.
 * `K` names the failures that can happen, so that a route declares these and no others.
 */
export type Result<T, K extends FailureKind = FailureKind> =
  | { readonly ok: true; readonly value: T; readonly replayed?: boolean }
  | Refused<K>;

/** What a write can answer: besides its own failures, those that every write has. */
export type Written<T, K extends FailureKind> = Result<T, K | 'forbidden' | 'key_reused'>;

export const done = <T>(value: T): { readonly ok: true; readonly value: T } => ({ ok: true, value });
export const refused = <F extends Failure>(failure: F): { readonly ok: false; readonly failure: F } => ({
  ok: false,
  failure,
});
