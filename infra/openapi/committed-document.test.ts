import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { breakingChanges } from './breaking-changes.ts';
import { clientTypes } from './client-types.ts';
import { committedDocument, TYPES_FILE, written } from './committed-document.ts';
import { servedDocument } from './served-document.ts';

const served = written(await servedDocument());

it('the API breaks no program that was written for the committed document (meant: npm run client -- --break)', () => {
  expect(breakingChanges(JSON.parse(committedDocument()), JSON.parse(served))).toEqual([]);
});

it('the committed document is the one that is served (else: npm run client)', () => {
  expect(JSON.parse(served)).toEqual(JSON.parse(committedDocument()));
  expect(served).toBe(committedDocument());
});

it('the client’s types are what the document makes (else: npm run client)', async () => {
  expect(await clientTypes(served)).toBe(readFileSync(TYPES_FILE, 'utf8'));
});
