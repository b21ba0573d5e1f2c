/** The names of one file's blobs: what came, and what is shown of it. */
import type { Size } from './limits.ts';

export type Part = 'original' | Size;

/** `sha256` in lower-case hexadecimal, of the original. One organisation's file is never another's, however alike. */
export const blobName = (organisationId: string, sha256: string, part: Part) => `${organisationId}/${sha256}/${part}`;

/** The hash in a name of ours. */
export const hashIn = (name: string): string => name.split('/')[1] ?? '';
