/** `npm run roles`: writes docs/roles.md and the client's table of roles anew. */
import { writeFileSync } from 'node:fs';
import { rolesModule, rolesPage } from './roles.ts';

writeFileSync(new URL('../../docs/roles.md', import.meta.url), rolesPage());
writeFileSync(new URL('../../packages/client/src/generated/roles.ts', import.meta.url), rolesModule());
console.log('docs/roles.md and the client’s table are written');
