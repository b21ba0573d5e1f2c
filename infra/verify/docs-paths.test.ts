import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';
import { checkDocsPaths } from './docs-paths.ts';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const check = (text: string, name = 'docs/page.md') => checkDocsPaths(ROOT, [{ name, text }]);

it.each([
  'see `packages/db/no-such-file.ts`',
  'see `packages/db/no-such-file.ts:12`',
  'run\n```sh\nnode infra/no-such-file.ts --now\n```\n',
  'all of `packages/db/no-such-folder/*.sql`',
])('misses a path that does not exist: %s', (text) => {
  expect(check(text)).toEqual([expect.stringMatching(/^docs\/page[.]md: there is no (packages|infra)\/.*no-such-/)]);
});

it('follows links from where the document stands', () => {
  expect(check('[x](glossary.md) [y](../README.md#start-it)')).toEqual([]);
  expect(check('[x](no-such-page.md)')).toEqual(['docs/page.md: there is no docs/no-such-page.md']);
});

it('misses an npm script that does not exist', () => {
  expect(check('`npm run --silent no-such-script -- x`')).toEqual([
    'docs/page.md: there is no script "no-such-script"',
  ]);
});

it('takes what exists, what is a placeholder and what is no path', () => {
  const text =
    '`packages/db/src/pool.ts:3`, `packages/<name>/src`, `apps and/or packages`, `/v1/items`, `npm run verify`';

  expect(check(text)).toEqual([]);
  expect(check('`packages/no-such`', 'apps/api/notes.md')).toEqual([]);
});
