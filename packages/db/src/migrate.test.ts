import { cp, mkdtemp, readdir, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { freshDatabase } from '@garboard/tests/support/database.ts';
import { describe, expect, it, onTestFinished } from 'vitest';
import { migrate } from './migrate.ts';
import { openPools, type Pools } from './pool.ts';

const COMMITTED = new URL('../migrations/', import.meta.url);

/** A folder with the committed migrations, to be tampered with. */
async function copyOfMigrations(): Promise<URL> {
  const folder = await mkdtemp(path.join(tmpdir(), 'garboard-migrations-'));
  onTestFinished(() => rm(folder, { recursive: true }));
  await cp(COMMITTED, folder, { recursive: true });
  return pathToFileURL(`${folder}/`);
}

async function poolsOnFreshDatabase(): Promise<Pools> {
  const { url } = await freshDatabase();
  const pools = openPools({ url, size: 1 });
  onTestFinished(() => pools.close());
  return pools;
}

describe('migrate', () => {
  it('applies every file once, in order, and nothing the second time', async () => {
    const { owner } = await poolsOnFreshDatabase();
    const names = (await readdir(COMMITTED)).sort();

    expect(await migrate(owner)).toEqual(names);
    expect(await migrate(owner)).toEqual([]);
  });

  it('lets two processes migrate at once: one applies, the other waits and finds it done', async () => {
    const { url } = await freshDatabase();
    const both = [openPools({ url, size: 1 }), openPools({ url, size: 1 })];
    onTestFinished(async () => void (await Promise.all(both.map((pools) => pools.close()))));

    const applied = await Promise.all(both.map(({ owner }) => migrate(owner)));

    expect(applied.map((names) => names.length).sort()).toEqual([0, (await readdir(COMMITTED)).length]);
  });

  it('refuses a file that was changed after it was applied, and names it', async () => {
    const { owner } = await poolsOnFreshDatabase();
    const folder = await copyOfMigrations();
    await migrate(owner, folder);
    await writeFile(new URL('0001_core.sql', folder), 'select 1;');

    await expect(migrate(owner, folder)).rejects.toThrow('0001_core.sql was changed after it was applied');
  });

  it('refuses a missing number before it applies anything', async () => {
    const { owner } = await poolsOnFreshDatabase();
    const folder = await copyOfMigrations();
    const next = (await readdir(folder)).length + 1;
    await writeFile(new URL(`${String(next + 1).padStart(4, '0')}_after_a_gap.sql`, folder), 'select 1;');

    await expect(migrate(owner, folder)).rejects.toThrow(`expected number ${next}`);
    expect(await owner.introspection.getTables()).toEqual([]);
  });

  it('leaves nothing of a file that fails half way', async () => {
    const { owner } = await poolsOnFreshDatabase();
    const folder = await copyOfMigrations();
    const next = String((await readdir(folder)).length + 1).padStart(4, '0');
    await writeFile(
      new URL(`${next}_broken.sql`, folder),
      'create table half (id integer); select no_such_function();',
    );

    await expect(migrate(owner, folder)).rejects.toThrow('no_such_function');
    expect((await owner.introspection.getTables()).map(({ name }) => name)).not.toContain('half');
  });
});
