/** Columns that grow: a larger copy of each when the rows no longer fit. */
export type Column = Uint8Array | Uint16Array | Int32Array | Float64Array;
export type Columns<Name extends string = string> = { readonly [N in Name]: Column };

export const FEW = 64;

/** The same columns where `rows` fit into `one` of them, else copies with room for twice as many. */
export function withRoom<Some extends Columns>(columns: Some, one: Column, rows: number): Some {
  if (rows <= one.length) return columns;
  return Object.fromEntries(Object.entries(columns).map(([name, column]) => [name, larger(column, 2 * rows)])) as Some;
}

function larger(column: Column, size: number): Column {
  const copy = new (column.constructor as new (size: number) => Column)(size);
  copy.set(column);
  return copy;
}
