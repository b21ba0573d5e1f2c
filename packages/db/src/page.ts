/** A keyset page: rows after a key, at most `limit`, and whether more follow. */
export type Page<Row> = { readonly rows: readonly Row[]; readonly more: boolean };

/** Ask for `limit + 1` rows; the one too many only says that there is more. */
export function pageOf<Row>(rows: readonly Row[], limit: number): Page<Row> {
  return { rows: rows.slice(0, limit), more: rows.length > limit };
}
