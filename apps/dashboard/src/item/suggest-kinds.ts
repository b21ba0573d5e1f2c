/** Which kinds of thing somebody may mean who writes down what it is in plain words. */

type Named = { readonly id: string; readonly name: string };

const MOST = 4;
/** Words that name no thing: "a hose for the cooker". */
const SMALL = new Set(['a', 'an', 'and', 'the', 'of', 'for', 'in', 'on', 'at', 'to', 'by', 'or', 'its', 'with', 'no']);

/**
 * The likeliest first, at most four; none where no word fits. A word fits where a word of the kind's name or id begins
 * with it: somebody may still be typing. Among equals goes first whose name is told more fully by what was written.
 */
export function suggestKinds<Kind extends Named>(kinds: readonly Kind[], text: string): Kind[] {
  const asked = wordsOf(text).filter((word) => word.length > 1);
  const weighed = kinds.map((kind) => ({ kind, ...weigh(kind, asked) })).filter(({ fitting }) => fitting > 0);
  const most = Math.max(...weighed.map(({ fitting }) => fitting));
  return weighed
    .filter(({ fitting }) => fitting === most)
    .sort((a, b) => b.told - a.told)
    .slice(0, MOST)
    .map(({ kind }) => kind);
}

/** How many of the words fit, and which part of the kind's own words they tell. */
function weigh({ id, name }: Named, asked: readonly string[]): { fitting: number; told: number } {
  const own = [...new Set([...wordsOf(name), ...wordsOf(id.replaceAll('_', ' '))])];
  const tellsOne = (word: string) => own.some((each) => each.startsWith(word));
  return {
    fitting: asked.filter(tellsOne).length,
    told: own.filter((each) => asked.some((word) => each.startsWith(word))).length / own.length,
  };
}

/** In small letters, without the plural's s: "Hoses, gas" and "gas hose" have the same words. */
function wordsOf(text: string): string[] {
  const words = text.toLowerCase().match(/[\p{L}\d]+/gu) ?? [];
  return words
    .filter((word) => !SMALL.has(word))
    .map((word) => (/[^s]s$/.test(word) && word.length > 3 ? word.slice(0, -1) : word));
}
