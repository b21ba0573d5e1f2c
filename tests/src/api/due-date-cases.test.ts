/** Every worked case of tests/cases/due-dates, asked through HTTP of a started server. */
import { serve } from '@garboard/api/serve.test-support.ts';
import type { Explained } from '@garboard/contract/item/explain.ts';
import { afterAll, describe, expect, it } from 'vitest';
import { type Answered, differencesFrom } from '../cases/differences.ts';
import { readDueDateCases } from '../cases/read-cases.ts';
import { app, signedIn } from '../support/api.ts';

const server = await serve(app);
afterAll(() => server.close());
const viewer = await signedIn('viewer', undefined, (path, init) => fetch(server.address + path, init));

describe('a started server, on worked cases', () => {
  it.each(readDueDateCases().map((each) => [each.title, each] as const))(
    '%s',
    async (_, { request, expect: expected }) => {
      const { status, text, body } = await viewer.post<Explained>('/v1/due-dates/explain', request);

      expect(status, text).toBe(200);
      expect(expected.flatMap((one) => differencesFrom(one, body.items as readonly Answered[]))).toEqual([]);
    },
  );
});
