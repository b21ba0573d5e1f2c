/**
 * What every decoder of an identifier answers: the parts, with what is doubtful about them, or why it cannot be
 * one. Doubt never refuses: a number is refused only where a check digit or the form makes it impossible.
 */
export type NotOne = { readonly kind: 'not_one'; readonly why: string };

/** `doubts` are whole sentences for a screen. */
export type Decoded<T> = T & { readonly kind: 'decoded'; readonly doubts: readonly string[] };

export function notOne(why: string): NotOne {
  return { kind: 'not_one', why };
}
