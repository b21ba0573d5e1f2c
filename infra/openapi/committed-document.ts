/** The document as it is in the repository: what programs out there were written for. */
import { readFileSync } from 'node:fs';

export const DOCUMENT_FILE = new URL('../../packages/client/openapi.json', import.meta.url);
export const TYPES_FILE = new URL('../../packages/client/src/generated/api.d.ts', import.meta.url);

export const committedDocument = (): string => readFileSync(DOCUMENT_FILE, 'utf8');

/** One line for each small thing, so that a change can be read. */
export const written = (document: string): string => `${JSON.stringify(JSON.parse(document), null, 2)}\n`;
