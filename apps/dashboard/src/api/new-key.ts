/** A key that nothing else has. Not `crypto.randomUUID`: browsers keep it from pages served over plain HTTP. */
export function newKey(): string {
  return Array.from(crypto.getRandomValues(new Uint8Array(16)), (byte) => byte.toString(16).padStart(2, '0')).join('');
}
