/** What differs between before and after, in words a person reads. */
import { strings } from '../strings/audit.ts';

export type Difference = { readonly property: string; readonly before: string; readonly after: string };
type Values = Readonly<Record<string, unknown>> | undefined;

/** Said by the line itself: what it is about, when, and by whom. */
const ASIDE = new Set(['version', 'id', 'itemId', 'vesselId', 'organisationId', 'recordedAt', 'recordedBy']);

export function differences(before: Values, after: Values): Difference[] {
  const properties = [...new Set([...Object.keys(before ?? {}), ...Object.keys(after ?? {})])];
  return properties
    .filter(
      (property) => !ASIDE.has(property) && JSON.stringify(before?.[property]) !== JSON.stringify(after?.[property]),
    )
    .map((property) => ({
      property: inWords(property),
      before: valueInWords(before?.[property]),
      after: valueInWords(after?.[property]),
    }))
    .filter((told) => told.before !== told.after);
}

/** `builtYear` reads "built year". */
const inWords = (property: string) => property.replace(/(?<=[a-z])(?=[A-Z])/g, ' ').toLowerCase();

function valueInWords(value: unknown): string {
  if (value === undefined || value === null || value === '') return strings.nothing;
  if (typeof value === 'boolean') return value ? strings.yes : strings.no;
  if (Array.isArray(value)) return value.length === 0 ? strings.nothing : value.map(valueInWords).join(', ');
  if (typeof value !== 'object') return String(value);
  const parts = Object.entries(value).map(([property, each]) => `${inWords(property)} ${valueInWords(each)}`);
  return parts.length === 0 ? strings.nothing : parts.join('; ');
}
