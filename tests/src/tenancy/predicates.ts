/** The places in a statement's text where it says which organisation is meant, and the text without one of them. */

/** `"t"."organisation_id" = $1`, the same between two tables, and the same of the registry's own key. */
const PREDICATE = /(?:"?\w+"?\.)?"?organisation_id"?\s*=\s*(\$\d+(?:::uuid)?|(?:"?\w+"?\.)?"?organisation_id"?)/g;

/** Only what filters: in `on conflict` and in `set` nothing is asked. */
export function countPredicates(text: string): number {
  return [...text.matchAll(PREDICATE)].length;
}

/** A parameter stays in use, so that the statement keeps its parameters' types; a join loses its condition. */
export function withoutPredicate(text: string, which: number): string {
  let at = -1;
  return text.replace(PREDICATE, (whole, right: string) => {
    at += 1;
    if (at !== which) return whole;
    return right.startsWith('$') ? `(${right.replace('::uuid', '')}::uuid is not null)` : 'true';
  });
}

/** The same for lists of every length: a statement that takes two ids is the one that takes three. */
export const shapeOf = (text: string): string => text.replaceAll(/\(\$\d+(?:, \$\d+)*\)/g, '($1)');
