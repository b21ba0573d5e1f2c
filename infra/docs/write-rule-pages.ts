/** `npm run rule-pages`: writes docs/rules anew from the catalogue; a page whose rule is gone goes too. */
import { readdirSync, rmSync, writeFileSync } from 'node:fs';
import { rulePages } from './rule-pages.ts';

const FOLDER = new URL('../../docs/rules/', import.meta.url);

const pages = rulePages();
const gone = readdirSync(FOLDER).filter((name) => name !== 'README.md' && !pages.has(name));
for (const name of gone) rmSync(new URL(name, FOLDER));
for (const [name, text] of pages) writeFileSync(new URL(name, FOLDER), text);
console.log(`docs/rules: ${pages.size} pages are written, ${gone.length} taken away`);
