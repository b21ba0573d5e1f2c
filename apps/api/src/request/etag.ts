/** Versions as entity tags: a reader sends back the one that it read. */
export const etagOf = (version: number) => `"${version}"`;

export type IfMatch =
  | { readonly kind: 'absent' }
  /** Not a single strong tag. `*` and lists are refused: they do not say which version was read. */
  | { readonly kind: 'unreadable' }
  | { readonly kind: 'version'; readonly version: number };

/** A tag that is none of ours can match no version: it reads as version 0, which nothing ever has. */
export function readIfMatch(header: string | undefined): IfMatch {
  if (header === undefined) return { kind: 'absent' };
  if (!/^"[\x21\x23-\x7e]*"$/.test(header)) return { kind: 'unreadable' };
  const version = /^"([1-9]\d{0,8})"$/.exec(header)?.[1];
  return { kind: 'version', version: Number(version ?? 0) };
}

/** Weak comparison, as RFC 9110 asks for reading. */
export function matchesNone(header: string, etag: string): boolean {
  return header.trim() === '*' || header.split(',').some((tag) => tag.trim().replace(/^W\//, '') === etag);
}
