/**
 * Where files are kept, by name. A name is made of an organisation, a hash and what of it; nothing that somebody
 * typed is ever part of one. What has a name never changes: the same name is always the same bytes.
 */
export type BlobStore = {
  /** Resolves when the bytes are safe from a cut of the power. */
  put(name: string, bytes: Uint8Array): Promise<void>;
  get(name: string): Promise<Uint8Array | 'missing'>;
  has(name: string): Promise<boolean>;
  /** Taking away what is not there is no fault. */
  remove(name: string): Promise<void>;
  /** Everything whose name begins so, in any order. `putAt`: when it was last put. */
  list(prefix: string): AsyncIterable<Stored>;
};

export type Stored = { readonly name: string; readonly putAt: Date };

const NAME = /^[0-9a-f-]{36}\/[0-9a-f]{64}\/[a-z]+$/;

/** Throws for a name that this program does not make: no path leads out of the store. */
export function checkName(name: string): string {
  if (!NAME.test(name)) throw new Error(`${JSON.stringify(name)} is no name of a blob`);
  return name;
}
