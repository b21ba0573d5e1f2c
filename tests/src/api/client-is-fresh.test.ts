import { readFile } from 'node:fs/promises';
import { expect, it } from 'vitest';
import { clientTypes } from '../../../infra/client/client-types.ts';

it('the dashboard’s client is what the API’s document makes (else: npm run client)', async () => {
  const committed = await readFile(new URL('../../../apps/dashboard/src/generated/api.d.ts', import.meta.url), 'utf8');

  expect(await clientTypes()).toBe(committed);
});
