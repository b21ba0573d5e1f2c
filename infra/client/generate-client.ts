/** `npm run client`: writes the types of the dashboard's client from the API's own document. */
import { writeFileSync } from 'node:fs';
import { clientTypes } from './client-types.ts';

const CLIENT = new URL('../../apps/dashboard/src/generated/api.d.ts', import.meta.url);

writeFileSync(CLIENT, await clientTypes());
console.log('apps/dashboard/src/generated/api.d.ts is written');
