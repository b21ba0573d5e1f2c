/** Chance that can be repeated: the same text gives the same numbers on every machine. */

export type Random = {
  /** A whole number, both ends included. */
  between(least: number, most: number): number;
  /** True about `share` of the time, from 0 to 1. */
  chance(share: number): boolean;
  pick<T>(from: readonly [T, ...T[]]): T;
};

export function randomOf(seed: string): Random {
  const next = mulberry32(hash(seed));
  const between = (least: number, most: number) => least + Math.floor(next() * (most - least + 1));
  return {
    between,
    chance: (share) => next() < share,
    pick: (from) => from[between(0, from.length - 1)] ?? from[0],
  };
}

/** FNV-1a, 32 bits. */
function hash(text: string): number {
  let value = 0x811c9dc5;
  for (const character of text) value = Math.imul(value ^ (character.codePointAt(0) ?? 0), 0x01000193);
  return value >>> 0;
}

/** Mulberry32: from 0 up to but not including 1. */
function mulberry32(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  };
}
