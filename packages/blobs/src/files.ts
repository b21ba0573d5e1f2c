/** Everything that can be done with a file's bytes: what the program is put together with. */
import type { BlobStore } from './blob-store.ts';
import type { Inspected } from './evidence/inspect.ts';

export type Files = { readonly store: BlobStore; inspect(bytes: Uint8Array): Promise<Inspected> };
