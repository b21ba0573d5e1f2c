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

export type Result<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly failure: Failure };

export const done = <T>(value: T): Result<T> => ({ ok: true, value });
export const refused = (failure: Failure): { readonly ok: false; readonly failure: Failure } => ({ ok: false, failure });
