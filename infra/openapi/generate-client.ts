/**
 * `npm run client`: writes the API's document and the client's types. What would break programs that were written for
 * the document as committed is told, and written only when that is meant: `npm run client -- --break`.
 */
import { writeFileSync } from 'node:fs';
import { breakingChanges } from './breaking-changes.ts';
import { clientTypes } from './client-types.ts';
import { committedDocument, DOCUMENT_FILE, TYPES_FILE, written } from './committed-document.ts';
import { servedDocument } from './served-document.ts';

const document = written(await servedDocument());
const breaking = breakingChanges(JSON.parse(committedDocument()), JSON.parse(document));
for (const change of breaking) console.log(`breaks: ${change}`);

if (breaking.length > 0 && !process.argv.includes('--break')) {
  console.log('Nothing is written. Mend it, or say that it is meant: npm run client -- --break');
  process.exitCode = 1;
} else {
  writeFileSync(DOCUMENT_FILE, document);
  writeFileSync(TYPES_FILE, await clientTypes(document));
  console.log('packages/client has the document and its types');
}
