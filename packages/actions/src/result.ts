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

/** `replayed`: the value of an earlier request with the same key; nothing was done again. Values are plain JSON. */
export type Result<T> =
  | { readonly ok: true; readonly value: T; readonly replayed?: boolean }
  | { readonly ok: false; readonly failure: Failure };

export const done = <T>(value: T): { readonly ok: true; readonly value: T } => ({ ok: true, value });
export const refused = (failure: Failure): { readonly ok: false; readonly failure: Failure } => ({
  ok: false,
  failure,
});
