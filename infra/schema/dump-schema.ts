/** `npm run schema`: writes packages/db/schema.sql from a freshly migrated database. */
import { writeFileSync } from 'node:fs';
import { openPools } from '@garboard/db/pool.ts';
import { startDatabaseServer } from '@garboard/tests/harness/database-server.ts';
import { createMigratedDatabase } from '@garboard/tests/harness/test-database.ts';
import { describeSchema } from './describe-schema.ts';

const SCHEMA = new URL('../../packages/db/schema.sql', import.meta.url);

const server = await startDatabaseServer();
const dump = async (): Promise<void> => {
  const database = await createMigratedDatabase(server.url);
  const pools = openPools({ url: database.url });
  const text = await describeSchema(pools.owner).finally(pools.close).finally(database.drop);
  writeFileSync(SCHEMA, text);
};
await dump().finally(server.stop);
console.log('packages/db/schema.sql is written');
