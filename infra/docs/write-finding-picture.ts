/** `npm run finding-picture`: draws the picture in docs/findings.md anew. */
import { readFileSync, writeFileSync } from 'node:fs';
import { withPicture } from './finding-picture.ts';

const page = new URL('../../docs/findings.md', import.meta.url);
writeFileSync(page, withPicture(readFileSync(page, 'utf8')));
console.log('docs/findings.md has its picture');
