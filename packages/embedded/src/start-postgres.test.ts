import { spawnSync } from 'node:child_process';
import { once } from 'node:events';
import fs from 'node:fs';
import net from 'node:net';
import path from 'node:path';
import { afterAll, afterEach, beforeAll, describe, expect, test, vi } from 'vitest';
import { isRunning } from './process-table.ts';
import { startPostgres } from './start-postgres.ts';
import { ask, newFolder, postmaster, QUICK, runningPostmaster, unless } from './test-support/data-folders.ts';
import { becoming, StarterProcess } from './test-support/starter-process.ts';

vi.setConfig({ testTimeout: 60_000, hookTimeout: 60_000 });

const NOBODY = 65534;
const STRANGER = 12345;
const isRoot = process.getuid?.() === 0;
const canBecome = isRoot && spawnSync('setpriv', ['--version']).status === 0;
const HIDE_SETPRIV = ['unshare', '--mount', 'sh', '-c', 'mount --bind /dev/null /usr/bin/setpriv; exec "$@"', 'sh'];
const canHideSetpriv = canBecome && spawnSync('unshare', [...HIDE_SETPRIV.slice(1), 'true']).status === 0;

/** Made once by whoever runs the tests, for the tests that do not care how a cluster comes about. */
const made = newFolder(0o755, afterAll);
afterEach(() => vi.unstubAllEnvs());
beforeAll(async () => (await startPostgres({ dataDir: made, ...QUICK })).stop());

describe('starting', () => {
  test.skipIf(!isRoot)(unless(isRoot, 'not root', 'as root runs the server as another user'), async () => {
    const server = await startPostgres({ dataDir: made, ...QUICK });
    expect(await ask(server.url, 'select 40 + 2')).toBe(42);
    expect(fs.statSync(`/proc/${runningPostmaster(made).pid}`).uid).toBe(NOBODY);
    await server.stop();
  });

  test.skipIf(isRoot && !canBecome)(
    unless(!isRoot || canBecome, 'root without setpriv', 'as a normal user needs nothing special'),
    async () => {
      const dataDir = newFolder();
      if (isRoot) fs.chownSync(dataDir, NOBODY, NOBODY);
      const starter = new StarterProcess({ dataDir, ...QUICK }, isRoot ? { prefix: becoming(NOBODY) } : {});
      expect(await ask((await starter.started()).url, 'select 40 + 2')).toBe(42);
      expect(fs.statSync(path.join(dataDir, 'pg.json')).uid).toBe(isRoot ? NOBODY : process.getuid?.());
      await starter.stop();
      expect(postmaster(dataDir)).toBeNull();
    },
  );

  test.skipIf(!canBecome)(
    unless(canBecome, 'not root with setpriv', 'as root in a folder that only root may enter'),
    async () => {
      const dataDir = path.join(newFolder(0o700), 'data');
      const server = await startPostgres({ dataDir, ...QUICK });
      expect(await ask(server.url, 'select 40 + 2')).toBe(42);
      expect(fs.statSync(path.join(dataDir, 'pg')).uid).toBe(NOBODY);
      await server.stop();
    },
  );

  test.skipIf(!canHideSetpriv)(
    unless(canHideSetpriv, 'not root with setpriv and mount namespaces', 'as root in such a folder without setpriv'),
    async () => {
      const dataDir = path.join(newFolder(0o700), 'data');
      const starter = new StarterProcess({ dataDir, ...QUICK }, { prefix: HIDE_SETPRIV });
      expect(await ask((await starter.started()).url, 'select 40 + 2')).toBe(42);
      await starter.stop();
      const withSetpriv = await startPostgres({ dataDir, ...QUICK });
      expect(await ask(withSetpriv.url, 'select 40 + 2')).toBe(42);
      await withSetpriv.stop();
      expect(fs.statSync(path.join(dataDir, 'pg')).uid).toBe(0);
    },
  );

  test.skipIf(!canBecome)(
    unless(canBecome, 'not root with setpriv', 'as root beside the server of a user leaves that user the files'),
    async () => {
      const belongsTo = (uid: number) => {
        for (const name of [made, path.join(made, 'pg.lock')]) fs.chownSync(name, uid, uid);
      };
      belongsTo(NOBODY);
      const user = new StarterProcess({ dataDir: made, ...QUICK }, { prefix: becoming(NOBODY) });
      await user.started();
      const root = await startPostgres({ dataDir: made, ...QUICK });
      expect(root.owner).toBe(false);
      expect(fs.statSync(path.join(made, 'pg.json')).uid).toBe(NOBODY);
      await root.stop();
      await user.stop();
      expect(postmaster(made)).toBeNull();
      belongsTo(0);
    },
  );

  test.skipIf(!canBecome)(
    unless(canBecome, 'not root with setpriv', 'as another user than the one who made the data is refused in words'),
    async () => {
      const { name, message } = await new StarterProcess({ dataDir: made }, { prefix: becoming(STRANGER) }).failed();
      expect(name).toBe('UnusableDataFolder');
      expect(message).toMatch(/belongs to another user .* started as root before/);
      expect(message).toContain(`chown -R ${STRANGER} ${made}`);
    },
  );

  test.skipIf(!canBecome)(
    unless(canBecome, 'not root with setpriv', 'as a user who may not write in the folder is refused in words'),
    async () => {
      const dataDir = newFolder();
      const { name, message } = await new StarterProcess({ dataDir }, { prefix: becoming(STRANGER) }).failed();
      expect(name).toBe('UnusableDataFolder');
      expect(message).toMatch(/may not write/);
      expect(fs.readdirSync(dataDir)).toEqual([]);
    },
  );
});

describe('a started server', () => {
  test('listens on this machine only, keeps UTC and takes 60 connections, whatever else is set', async () => {
    const settings = { fsync: 'off', work_mem: '5MB', listen_addresses: '*', timezone: 'Europe/Oslo' };
    const server = await startPostgres({ dataDir: made, port: 0, settings });
    const setting = (name: string) => ask(server.url, `select current_setting('${name}')`);
    expect(await setting('listen_addresses')).toBe('127.0.0.1');
    expect(await setting('unix_socket_directories')).toBe('');
    expect(await setting('TimeZone')).toBe('UTC');
    expect(await setting('max_connections')).toBe('60');
    expect(await setting('work_mem')).toBe('5MB');
    expect(await setting('server_encoding')).toBe('UTF8');
    await server.stop();
  });

  test('keeps its password to the user who started it, and lets nobody in without', async () => {
    const server = await startPostgres({ dataDir: made, ...QUICK });
    for (const file of ['pg.json', 'pg/superuser-password']) {
      expect(fs.statSync(path.join(made, file)).mode & 0o777, file).toBe(0o600);
    }
    expect(JSON.parse(fs.readFileSync(path.join(made, 'pg.json'), 'utf8')).url).toBe(server.url);
    const guess = server.url.replace(/:[^:@]+@/, ':guess@');
    await expect(ask(guess, 'select 1')).rejects.toThrow(/password authentication failed/);
    await server.stop();
  });

  test('tells its caller each line it writes, and leaves signals to its caller', async () => {
    const listeners = () => ['SIGINT', 'SIGTERM', 'SIGHUP', 'exit'].map((event) => process.listenerCount(event));
    const before = listeners();
    const lines: string[] = [];
    const server = await startPostgres({ dataDir: made, ...QUICK, log: (line) => lines.push(line) });
    expect(lines.filter((line) => line.includes('ready to accept connections'))).toHaveLength(1);
    expect(listeners()).toEqual(before);
    await server.stop();
    expect(lines.at(-1)).toMatch(/database system is shut down/);
  });

  test.skipIf(process.platform !== 'linux')(
    unless(process.platform === 'linux', 'reads /proc', 'learns nothing from the environment of its caller'),
    async () => {
      vi.stubEnv('SOME_SECRET', 'hunter2');
      vi.stubEnv('PGDATESTYLE', 'German');
      const server = await startPostgres({ dataDir: made, ...QUICK });
      expect(fs.readFileSync(`/proc/${runningPostmaster(made).pid}/environ`, 'utf8')).not.toMatch(/SECRET|PGDATESTYLE/);
      await server.stop();
    },
  );

  test('is gone when stop returns, and stopping twice is one stop', async () => {
    const server = await startPostgres({ dataDir: made, ...QUICK });
    const running = runningPostmaster(made);
    await Promise.all([server.stop(), server.stop()]);
    await server.stop();
    expect(isRunning(running)).toBe(false);
    expect(fs.readdirSync(made).sort()).toEqual(['pg', 'pg.lock']);
    await expect(ask(server.url, 'select 1')).rejects.toThrow(/ECONNREFUSED/);
  });

  test('takes another port where the wanted one is taken', async () => {
    const somebody = net.createServer().listen(0, '127.0.0.1');
    await once(somebody, 'listening');
    const { port: taken } = somebody.address() as net.AddressInfo;
    const server = await startPostgres({ ...QUICK, dataDir: made, port: taken });
    expect(server.port).not.toBe(taken);
    expect(new URL(server.url).port).toBe(String(server.port));
    expect(await ask(server.url, 'select 40 + 2')).toBe(42);
    await server.stop();
    somebody.close();
  });

  test('that cannot start says what the server said', async () => {
    const start = startPostgres({ dataDir: made, port: 0, settings: { shared_buffers: 'plenty' } });
    await expect(start).rejects.toThrow(/did not start.*shared_buffers.*plenty/s);
    expect(postmaster(made)).toBeNull();
  });
});

describe('two starters', () => {
  test('at once on an empty folder make one cluster with one owner, and both can query', async () => {
    const dataDir = newFolder();
    const starters = [1, 2].map(() => new StarterProcess({ dataDir, ...QUICK }));
    const started = await Promise.all(starters.map((starter) => starter.started()));
    expect(started.map(({ owner }) => owner).sort()).toEqual([false, true]);
    expect(started[0]?.url).toBe(started[1]?.url);
    expect(await Promise.all(started.map(({ url }) => ask(url, 'select 40 + 2')))).toEqual([42, 42]);
    expect(fs.readdirSync(dataDir).sort()).toEqual(['pg', 'pg.json', 'pg.lock']);
    await Promise.all(starters.map((starter) => starter.stop()));
    expect(postmaster(dataDir)).toBeNull();
  });

  test('share the server until the last one stops, whoever started it', async () => {
    const first = new StarterProcess({ dataDir: made, ...QUICK });
    await first.started();
    const second = await startPostgres({ dataDir: made, ...QUICK });
    expect(second.owner).toBe(false);
    await first.stop();
    expect(await ask(second.url, 'select 40 + 2')).toBe(42);
    await second.stop();
    expect(postmaster(made)).toBeNull();
  });
});
