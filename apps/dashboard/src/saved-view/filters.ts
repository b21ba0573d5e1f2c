/** A page's filters as a view keeps them: without the day, without what is open, without the view itself. */
type Filters = Readonly<Record<string, string>>;

const NOT_KEPT = ['asAt', 'open', 'view'];

export function filtersOf(search: object): Record<string, string> {
  const kept = Object.entries(search).filter(([key, value]) => value !== undefined && !NOT_KEPT.includes(key));
  return Object.fromEntries(kept.map(([key, value]) => [key, String(value)]));
}

export function isSame(a: Filters, b: Filters): boolean {
  const keys = new Set([...Object.keys(a), ...Object.keys(b)]);
  return [...keys].every((key) => a[key] === b[key]);
}
