/** `npm run schema`: writes packages/db/schema.sql from a freshly migrated database. */
import { writeFileSync } from 'node:fs';
import { startDatabaseServer } from '@garboard/tests/harness/database-server.ts';
import { createMigratedDatabase } from '@garboard/tests/harness/test-database.ts';
import { describeSchema } from './describe-schema.ts';

const SCHEMA = new URL('../../packages/db/schema.sql', import.meta.url);

const server = await startDatabaseServer();
const dump = async (): Promise<void> => {
  const database = await createMigratedDatabase(server.url);
  writeFileSync(SCHEMA, await describeSchema(database.url).finally(database.drop));
};
await dump().finally(server.stop);
console.log('packages/db/schema.sql is written');
