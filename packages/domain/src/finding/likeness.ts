/**
 * Whether something found may be what is on record already: by the thing, the place and the words. It proposes,
 * with its reasons; somebody decides. Common practice, no source.
 */
import type { Finding } from './finding.ts';

export type Described = Pick<Finding, 'zone' | 'itemId' | 'what'>;

/** Reasons in words, and how much they weigh together; `null` where nothing speaks for it. */
export type Likeness = { readonly weight: number; readonly because: readonly string[] };

const SAME_ITEM = 3;
const SAME_ZONE = 1;
/** Shorter words (the, is, at, not) say nothing of what is wrong. */
const SHORTEST_WORD = 4;

export function likeness(found: Described, known: Described): Likeness | null {
  const shared = sharedWords(found.what, known.what);
  const sameItem = found.itemId !== null && found.itemId === known.itemId;
  const sameZone = found.zone === known.zone;
  if (!sameItem && !(sameZone && shared.length > 0)) return null;
  return {
    weight: (sameItem ? SAME_ITEM : 0) + (sameZone ? SAME_ZONE : 0) + shared.length,
    because: [
      ...(sameItem ? ['the same thing aboard'] : []),
      ...(sameZone ? ['the same place'] : []),
      ...(shared.length > 0 ? [`the same words: ${shared.join(', ')}`] : []),
    ],
  };
}

function sharedWords(a: string, b: string): string[] {
  const known = new Set(wordsOf(b));
  return [...new Set(wordsOf(a))].filter((word) => known.has(word));
}

/** Without a plural s: a crack and cracks are one. */
const wordsOf = (text: string): string[] =>
  (text.toLowerCase().match(/\p{L}+/gu) ?? [])
    .map((word) => word.replace(/s$/, ''))
    .filter((word) => word.length >= SHORTEST_WORD);
