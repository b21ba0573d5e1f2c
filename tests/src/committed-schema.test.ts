import { readFile } from 'node:fs/promises';
import { expect, it } from 'vitest';
import { describeSchema } from '../../infra/schema/describe-schema.ts';
import { databaseUrl } from './support/database.ts';

it('packages/db/schema.sql is what the migrations make (else: npm run schema)', async () => {
  const committed = await readFile(new URL('../../packages/db/schema.sql', import.meta.url), 'utf8');

  expect(await describeSchema(databaseUrl)).toBe(committed);
});
