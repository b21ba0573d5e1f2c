/** `npm run roles`: writes docs/roles.md anew. */
import { writeFileSync } from 'node:fs';
import { rolesPage } from './roles.ts';

writeFileSync(new URL('../../docs/roles.md', import.meta.url), rolesPage());
console.log('docs/roles.md is written');
