/**
 * Whether two names of a maker or a model mean the same. Case, spaces, punctuation and accents do not count:
 * `Nord-Hav 25` is `NORDHAV25`. House convention, no source.
 */

/** `perhaps`: one is the beginning of the other, or all its words stand in it: `Nordhav` and `Nordhav Marine Ltd`. */
export type Likeness = 'same' | 'perhaps' | 'other';

export function likeness(a: string, b: string): Likeness {
  const [left, right] = [squeezed(a), squeezed(b)];
  if (left === right) return 'same';
  const isPart = left.startsWith(right) || right.startsWith(left) || hasWordsOf(a, b) || hasWordsOf(b, a);
  return isPart ? 'perhaps' : 'other';
}

/** The best of several: one that is the same is enough. */
export function likenessToAny(name: string, names: readonly string[]): Likeness {
  const found = names.map((each) => likeness(name, each));
  if (found.includes('same')) return 'same';
  return found.includes('perhaps') ? 'perhaps' : 'other';
}

/** Letters and digits only, in lower case, without accents. */
export function squeezed(text: string): string {
  return plain(text).replaceAll(/[^\p{L}\p{N}]/gu, '');
}

function hasWordsOf(whole: string, part: string): boolean {
  const words = wordsOf(whole);
  return wordsOf(part).every((word) => words.includes(word));
}

const wordsOf = (text: string): readonly string[] => plain(text).match(/[\p{L}\p{N}]+/gu) ?? [];
const plain = (text: string) => text.normalize('NFKD').replaceAll(/\p{M}/gu, '').toLowerCase();
