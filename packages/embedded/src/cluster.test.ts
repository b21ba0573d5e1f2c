import { createHash } from 'node:crypto';
import fs from 'node:fs';
import path from 'node:path';
import { expect, test } from 'vitest';
import { startPostgres } from './start-postgres.ts';
import { newFolder } from './test-support/data-folders.ts';
import { UnusableDataFolder } from './unusable-data-folder.ts';

const refusals: [string, Record<string, string>, RegExp][] = [
  [
    'data of another version',
    { 'pg/PG_VERSION': '17\n', 'pg/base/1/112': 'rows' },
    /made by PostgreSQL "17".*brings PostgreSQL 18/,
  ],
  [
    'data of an unknown version',
    { 'pg/PG_VERSION': 'x\u0007', 'pg/base/1/112': 'rows' },
    /made by PostgreSQL "x\\u0007"/,
  ],
  ['files that are no PostgreSQL data', { 'pg/photographs/keel.jpg': 'jpeg' }, /holds files, but no PostgreSQL data/],
  ['data that another program made', { 'pg/PG_VERSION': '18\n', 'pg/base/1/112': 'rows' }, /made by another program/],
  ['a file where the folder should be', { pg: 'not a folder' }, /is not a folder/],
];

test.each(refusals)('%s is refused in words and left byte for byte as it was', async (_, files, words) => {
  const dataDir = newFolder();
  for (const [name, content] of Object.entries({ ...files, 'pg.json': '{"url":"old"}', 'blobs/1': 'photo' })) {
    fs.mkdirSync(path.dirname(path.join(dataDir, name)), { recursive: true });
    fs.writeFileSync(path.join(dataDir, name), content);
  }
  const before = everythingIn(dataDir);
  const refused = await startPostgres({ dataDir, port: 0 }).catch((error: unknown) => error);
  expect(refused).toBeInstanceOf(UnusableDataFolder);
  expect(String(refused)).toMatch(words);
  expect(String(refused)).toContain(path.join(dataDir, 'pg'));
  expect(everythingIn(dataDir)).toEqual(before);
});

/** Name, kind, owner, mode, time of change and content of everything, the folder itself included. */
function everythingIn(folder: string): string[] {
  const names = ['.', ...fs.readdirSync(folder, { recursive: true, encoding: 'utf8' }).sort()];
  return names.map((name) => {
    const { mode, uid, ctimeMs } = fs.statSync(path.join(folder, name));
    const isFile = fs.statSync(path.join(folder, name)).isFile();
    const content = isFile
      ? createHash('sha256')
          .update(fs.readFileSync(path.join(folder, name)))
          .digest('hex')
      : 'folder';
    return [name, mode, uid, ctimeMs, content].join(' ');
  });
}
