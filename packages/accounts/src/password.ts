/**
 * Which passwords are taken. NIST SP 800-63B-4 section 3.1.1.2, from memory: at least 15 characters where the
 * password is the only factor, at least 64 allowed, no rules about kinds of characters, no expiry, and
 * none that is on a list of common ones or says the service or the person.
 */
import { dictionary } from '@zxcvbn-ts/language-common';

export const SHORTEST_PASSWORD = 15;
export const LONGEST_PASSWORD = 256;

export type PasswordFault = 'too_short' | 'too_long' | 'common' | 'says_who';

const common: ReadonlySet<string> = new Set(dictionary['passwords-common'].map(String));
/** Shorter parts of an address stand in too many good passwords. House convention, no source. */
const TELLING_LENGTH = 5;

/** `about`: what the password must not be made of: the person's address and name. */
export function passwordFault(password: string, about: readonly string[]): PasswordFault | null {
  const length = [...password].length;
  if (length < SHORTEST_PASSWORD) return 'too_short';
  if (length > LONGEST_PASSWORD) return 'too_long';
  const plain = password.normalize('NFKC').toLowerCase();
  if (isRepeated(plain)) return 'common';
  return ['garboard', ...about.flatMap(parts)].some((part) => isMostly(plain, part)) ? 'says_who' : null;
}

/** A common password, or a short text over and over: `passwordpassword`, `123456123456123`. */
function isRepeated(plain: string): boolean {
  for (let size = 1; size <= plain.length; size += 1) {
    const unit = plain.slice(0, size);
    if (unit.repeat(Math.ceil(plain.length / size)).slice(0, plain.length) !== plain) continue;
    return size < SHORTEST_PASSWORD / 2 || common.has(unit);
  }
  return false;
}

const parts = (text: string) =>
  text
    .toLowerCase()
    .split(/[^\p{L}\p{N}]+/u)
    .filter((part) => part.length >= TELLING_LENGTH);

/** Little is left of it without that word. */
const isMostly = (plain: string, part: string) => plain.replaceAll(part, '').length < SHORTEST_PASSWORD / 2;
