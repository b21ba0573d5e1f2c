/** Only what was given: a key without a value is no key. */
type Given<T> = { [K in keyof T]: Exclude<T[K], undefined> };

export function given<T extends object>(record: T): Given<T> {
  return Object.fromEntries(Object.entries(record).filter(([, value]) => value !== undefined)) as Given<T>;
}
