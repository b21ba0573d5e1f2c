/** Drops what is not known: in the API it is absent, in a record it is `null`. */
type Known<T> = { [K in keyof T as null extends T[K] ? never : K]: T[K] } & {
  [K in keyof T as null extends T[K] ? K : never]?: NonNullable<T[K]>;
};

export function withoutNulls<T extends object>(record: T): Known<T> {
  return Object.fromEntries(Object.entries(record).filter(([, value]) => value !== null)) as Known<T>;
}
