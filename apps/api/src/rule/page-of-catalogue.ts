/** A page of a list that is the program's own: in its own order, after the entry of that id. */
export type CataloguePage<Entry> = { readonly entries: readonly Entry[]; readonly last: string | undefined };

/** `null` when the catalogue has no entry of that id any more. */
export function pageOfCatalogue<Entry extends { readonly id: string }>(
  all: readonly Entry[],
  limit: number,
  after?: string,
): CataloguePage<Entry> | null {
  const from = after === undefined ? 0 : all.findIndex(({ id }) => id === after) + 1;
  if (from === 0 && after !== undefined) return null;
  const entries = all.slice(from, from + limit);
  return { entries, last: from + limit < all.length ? entries.at(-1)?.id : undefined };
}
