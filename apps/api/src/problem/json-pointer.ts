/** RFC 6901: the way to a place in a JSON document. */
export function jsonPointer(steps: readonly PropertyKey[]): string {
  return steps.map((step) => `/${String(step).replaceAll('~', '~0').replaceAll('/', '~1')}`).join('');
}
