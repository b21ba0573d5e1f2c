/** Content in the canonical form of RFC 8785 with its SHA-256: anybody can work the hash out again from the text. */
import { createHash } from 'node:crypto';
import canonicalize from 'canonicalize';

export function canonical(content: unknown): { readonly text: string; readonly hash: Buffer } {
  const text = canonicalize(content) ?? '';
  return { text, hash: createHash('sha256').update(text).digest() };
}
