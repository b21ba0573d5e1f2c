/**
 * Secrets that stand for somebody: API keys, sign-in links, invitations, links for outsiders.
 *
 * The text carries the organisation, so that the look-up itself happens inside that organisation's scope;
 * only a hash of the 256-bit secret is stored. A plain SHA-256 is enough for a secret nobody chose.
 */
import { createHash, randomBytes, timingSafeEqual } from 'node:crypto';

const PREFIX = { api_key: 'gbk_', sign_in_link: 'gbl_', invitation: 'gbi_', share_link: 'gbs_' } as const;
export type TokenKind = keyof typeof PREFIX;

export type Token = {
  readonly kind: TokenKind;
  readonly organisationId: string;
  readonly id: string;
  readonly secret: Buffer;
};

const BYTES = 16 + 16 + 32;

/** A new token with a secret from the system's generator. */
export function mintToken(kind: TokenKind, organisationId: string, id: string): Token & { readonly text: string } {
  const token = { kind, organisationId, id, secret: randomBytes(32) };
  return {
    ...token,
    text: PREFIX[kind] + Buffer.concat([bytes(organisationId), bytes(id), token.secret]).toString('base64url'),
  };
}

/** What tells one key from another without opening anything: the last of its text. House convention, no source. */
export const endOf = (text: string) => text.slice(-4);

/** `null` for anything that is not the text of a token. Says nothing about whether it is still good. */
export function readToken(text: string): Token | null {
  const kind = (Object.keys(PREFIX) as TokenKind[]).find((each) => text.startsWith(PREFIX[each]));
  if (!kind || !/^gb[klis]_[A-Za-z0-9_-]{86}$/.test(text)) return null;
  const all = Buffer.from(text.slice(4), 'base64url');
  if (all.length !== BYTES) return null;
  return { kind, organisationId: uuid(all.subarray(0, 16)), id: uuid(all.subarray(16, 32)), secret: all.subarray(32) };
}

export function hashSecret(secret: Buffer): Buffer {
  return createHash('sha256').update(secret).digest();
}

/** Compares in constant time. */
export function isSecretOf(secret: Buffer, hash: Buffer): boolean {
  return timingSafeEqual(hashSecret(secret), hash);
}

const bytes = (id: string) => Buffer.from(id.replaceAll('-', ''), 'hex');

function uuid(raw: Buffer): string {
  return raw.toString('hex').replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/, '$1-$2-$3-$4-$5');
}
