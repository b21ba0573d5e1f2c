import { spawn, spawnSync } from 'node:child_process';
import fs from 'node:fs';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, onTestFinished, test, vi } from 'vitest';
import { commandLine, isRunning, markOf } from './process-table.ts';
import { startPostgres } from './start-postgres.ts';
import { ask, newFolder, postmaster, QUICK, runningPostmaster, unless, until } from './test-support/data-folders.ts';
import { StarterProcess } from './test-support/starter-process.ts';

vi.setConfig({ testTimeout: 60_000, hookTimeout: 60_000 });

const seesProcesses = process.platform === 'linux';
const COUNT = 'select count(*)::int from boat';

const dataDir = newFolder(0o755, afterAll);
beforeAll(async () => {
  const server = await startPostgres({ dataDir, port: 0 });
  await ask(server.url, 'create table boat (id int)');
  await server.stop();
});

/** Rows that only the log knows yet when the server dies right after. */
async function addBoats(url: string): Promise<number> {
  await ask(url, 'insert into boat select generate_series(1, 1000)');
  return Number(await ask(url, COUNT));
}

describe('the owner killed -9', () => {
  test('leaves a server that the next start takes over with its data, and stops', async () => {
    const owner = new StarterProcess({ dataDir, port: 0 });
    const boats = await addBoats((await owner.started()).url);
    const orphan = runningPostmaster(dataDir);
    await owner.kill();
    expect(isRunning(orphan)).toBe(true);

    const next = await startPostgres({ dataDir, port: 0 });
    expect(runningPostmaster(dataDir)).toEqual(orphan);
    expect(next.owner).toBe(true);
    expect(await ask(next.url, COUNT)).toBe(boats);
    await next.stop();
    expect(isRunning(orphan)).toBe(false);
  });

  test('while another uses the server leaves the stopping to that one', async () => {
    const owner = new StarterProcess({ dataDir, port: 0 });
    await owner.started();
    const attached = await startPostgres({ dataDir, port: 0 });
    expect(attached.owner).toBe(false);
    await owner.kill();
    expect(await ask(attached.url, 'select 40 + 2')).toBe(42);
    await attached.stop();
    expect(postmaster(dataDir)).toBeNull();
  });

  test.skipIf(!seesProcesses)(
    unless(seesProcesses, 'reads /proc', 'does not make whoever has its pid now a user of the server'),
    async () => {
      const connectionFile = path.join(dataDir, 'pg.json');
      const server = await startPostgres({ dataDir, port: 0 });
      const connection = JSON.parse(fs.readFileSync(connectionFile, 'utf8'));
      const recycled = { pid: process.ppid, startedAt: 'long ago', id: 'killed' };
      fs.writeFileSync(connectionFile, JSON.stringify({ ...connection, users: [recycled, ...connection.users] }));
      await server.stop();
      expect(postmaster(dataDir)).toBeNull();
    },
  );

  test('in the middle of writing its note about the server does not confuse the next start', async () => {
    const owner = new StarterProcess({ dataDir, port: 0 });
    const { url } = await owner.started();
    await owner.kill();
    fs.writeFileSync(path.join(dataDir, 'pg.json'), '{"url":"postg');
    const next = await startPostgres({ dataDir, port: 0 });
    expect(next).toMatchObject({ url, owner: true });
    await next.stop();
    expect(postmaster(dataDir)).toBeNull();
  });
});

describe('the server killed -9', () => {
  test('starts again with its data, for the old caller too', async () => {
    const first = await startPostgres({ dataDir, port: 0 });
    const boats = await addBoats(first.url);
    process.kill(runningPostmaster(dataDir).pid, 'SIGKILL');

    const next = await startPostgres({ dataDir, port: first.port });
    expect(await ask(next.url, COUNT)).toBe(boats);
    await next.stop();
    expect(await ask(first.url, COUNT)).toBe(boats);
    await first.stop();
    expect(postmaster(dataDir)).toBeNull();
  });

  test.skipIf(!seesProcesses)(
    unless(
      seesProcesses,
      'reads /proc',
      'starts again although its pid is another program’s now, and leaves that alone',
    ),
    async () => {
      const first = await startPostgres({ dataDir, port: 0 });
      const boats = await addBoats(first.url);
      const killed = runningPostmaster(dataDir);
      process.kill(killed.pid, 'SIGKILL');
      await until('the server is gone', () => !isRunning(killed));
      const stranger = strangerOwnedLike(path.join(dataDir, 'pg'));
      const note = path.join(dataDir, 'pg/postmaster.pid');
      fs.writeFileSync(note, fs.readFileSync(note, 'utf8').replace(/^\d+/, String(stranger.pid)));

      const next = await startPostgres({ dataDir, port: 0 });
      expect(await ask(next.url, COUNT)).toBe(boats);
      await next.stop();
      await first.stop();
      expect(stranger.exitCode ?? stranger.signalCode).toBeNull();
    },
  );
});

test('a copy of the folder does not join the server of the original, which takes the same password', async () => {
  const copy = newFolder();
  const first = await startPostgres({ dataDir, port: 0 });
  await ask(first.url, 'checkpoint');
  spawnSync('cp', ['-a', `${dataDir}/.`, copy]);

  const second = await startPostgres({ dataDir: copy, ...QUICK });
  expect(second.port).not.toBe(first.port);
  expect(await ask(second.url, "select current_setting('data_directory')")).toBe(path.join(copy, 'pg'));
  expect(second.owner).toBe(true);
  await second.stop();
  expect(postmaster(copy)).toBeNull();
  expect(await ask(first.url, 'select 40 + 2')).toBe(42);
  await first.stop();
});

describe('the making of the cluster killed half way', () => {
  test.skipIf(!seesProcesses)(unless(seesProcesses, 'reads /proc', 'is done anew'), async () => {
    const folder = newFolder();
    fs.mkdirSync(path.join(folder, 'pg.init-older/cluster'), { recursive: true });
    fs.writeFileSync(path.join(folder, 'pg.init-older/cluster/PG_VERSION'), '18\n');
    const starter = new StarterProcess({ dataDir: folder, ...QUICK });
    const initdb = await initdbAtWork(folder);
    process.kill(-initdb, 'SIGKILL'); // with the children that it has in its process group
    await starter.kill();
    expect(fs.existsSync(path.join(folder, 'pg'))).toBe(false);
    expect(leftovers(folder)).toHaveLength(1);
    await expectsToStartAnew(folder);
  });

  test.skipIf(!seesProcesses)(
    unless(seesProcesses, 'reads /proc', 'is done anew while the initdb of the killed start still writes'),
    async () => {
      const folder = newFolder();
      const starter = new StarterProcess({ dataDir: folder, ...QUICK });
      const initdb = await initdbAtWork(folder);
      await starter.kill();
      expect(markOf(initdb)).not.toBeNull();
      await expectsToStartAnew(folder);
    },
  );
});

async function expectsToStartAnew(folder: string): Promise<void> {
  const server = await startPostgres({ dataDir: folder, ...QUICK });
  expect(await ask(server.url, "select count(*)::int from pg_database where datname ~ 'postgres|template'")).toBe(3);
  expect(leftovers(folder)).toEqual([]);
  await server.stop();
}

function leftovers(folder: string): string[] {
  return fs.readdirSync(folder).filter((name) => name.startsWith('pg.init'));
}

/** The pid of initdb once it is well under way: it has begun to fill the first database. */
async function initdbAtWork(folder: string): Promise<number> {
  const begun = () => leftovers(folder).some((name) => fs.existsSync(path.join(folder, name, 'cluster/base/1/1259')));
  await until('initdb fills the first database', begun);
  const initdb = fs
    .readdirSync('/proc')
    .map(Number)
    .find((pid) => pid > 0 && commandLine(pid).includes(`initdb -D ${folder}`));
  if (initdb === undefined) throw new Error('initdb was too quick to be killed half way');
  return initdb;
}

/** Some other program, under the account that runs the server: PostgreSQL looks at no others. */
function strangerOwnedLike(file: string) {
  const { uid, gid } = fs.statSync(file);
  const account = process.getuid?.() === 0 ? { uid, gid } : {};
  const stranger = spawn('sleep', ['300'], { ...account, stdio: 'ignore' });
  onTestFinished(() => void stranger.kill('SIGKILL'));
  return stranger;
}
