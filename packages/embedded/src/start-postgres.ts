/**
 * Starts a PostgreSQL server of the project's own in a data folder, or joins the one that runs there already.
 *
 * Installs no signal handlers: the caller closes its pools first and then calls `stop`.
 */
import { randomUUID } from 'node:crypto';
import fs from 'node:fs';
import { urlOf } from './ask-who.ts';
import { createCluster, inspectCluster } from './cluster.ts';
import { readConnection, type User, writeConnection } from './connection-file.ts';
import { type DataFolder, dataFolder, refuseUnlessWritable } from './data-folder.ts';
import { type NativeBinaries, nativeBinaries, restoreLibraryLinks } from './native-binaries.ts';
import { isRunning, markOf } from './process-table.ts';
import { chooseRunAs } from './run-as.ts';
import { findRunning, launch, type Server } from './server.ts';
import { withStarterLock } from './starter-lock.ts';
import { stopServer } from './stop-server.ts';

export type EmbeddedPostgres = {
  /** Address with password, for any client on this machine. The role is a superuser. */
  url: string;
  port: number;
  /** Whether nobody else was using the server when this call returned. */
  owner: boolean;
  /**
   * Ends this use of the server. Stops the server, and waits until it is gone, unless another live process still uses
   * it: then that one's `stop` will. May be called again; it is done once.
   */
  stop(): Promise<void>;
};

export type StartOptions = {
  /** The project's data folder, made if need be; the cluster goes into `pg` below it. */
  dataDir: string;
  /** Wanted port, 0 for any. When it is taken the server listens on another: read `port`. */
  port?: number;
  /** Gets each line that a server started by this call writes. */
  log?: (line: string) => void;
  /** Server settings, e.g. `{ fsync: 'off' }` for tests. Without effect when the server runs already. */
  settings?: Record<string, string>;
};

type Request = Required<Omit<StartOptions, 'dataDir'>> & { folder: DataFolder; binaries: NativeBinaries };
type Reached = { server: Server; password: string };

const DEFAULT_PORT = 54329;
const PATIENCE_MS = 300_000;

/** Throws `UnusableDataFolder` when the folder holds something else; any other failure is a fault with the server's last lines. */
export async function startPostgres(options: StartOptions): Promise<EmbeddedPostgres> {
  const request = asRequest(options);
  const { folder, binaries } = request;
  inspectCluster(folder.cluster, binaries.major); // before anything is written
  refuseUnlessWritable(folder);
  return withStarterLock(folder.starterLock, PATIENCE_MS, async () => {
    const { server, password } = (await findServer(folder, binaries)) ?? (await startServer(request));
    return join(request, server, urlOf(server.port, password));
  });
}

function asRequest({ dataDir, port = DEFAULT_PORT, log = () => {}, settings = {} }: StartOptions): Request {
  fs.mkdirSync(dataDir, { recursive: true });
  return { folder: dataFolder(dataDir), binaries: nativeBinaries(), port, log, settings };
}

async function findServer({ cluster }: DataFolder, { major }: NativeBinaries): Promise<Reached | null> {
  const found = inspectCluster(cluster, major);
  if (found.kind === 'absent') return null;
  const server = await findRunning(cluster, found.password);
  return server && { server, password: found.password };
}

async function startServer({ folder: { cluster, libraryLinks }, binaries, ...options }: Request): Promise<Reached> {
  const found = inspectCluster(cluster, binaries.major);
  const libraryPath = restoreLibraryLinks(binaries.native, libraryLinks);
  const postgres = { file: binaries.postgres, libraryPath };
  const as = chooseRunAs(cluster, found.kind === 'present', postgres);
  const initdb = { file: binaries.initdb, libraryPath };
  const password = found.kind === 'present' ? found.password : await createCluster(cluster, as, initdb);
  return { server: await launch(as, postgres, { ...options, cluster, password }), password };
}

function join(request: Request, server: Server, url: string): EmbeddedPostgres {
  const { connectionFile, cluster } = request.folder;
  const us: User = { id: randomUUID(), pid: process.pid, startedAt: markOf(process.pid)?.startedAt ?? '' };
  const { users: others } = readConnection(connectionFile, cluster);
  writeConnection(connectionFile, { url, cluster, users: [...others, us] });

  let stopping: Promise<void> | undefined;
  const stop = () => (stopping ??= leave(request, us, server));
  return { url, port: server.port, owner: others.length === 0, stop };
}

async function leave({ folder, binaries }: Request, us: User, server: Server): Promise<void> {
  if (!fs.existsSync(folder.root)) return stopServer(server.process); // the folder was deleted under the server
  return withStarterLock(folder.starterLock, PATIENCE_MS, async () => {
    const connection = readConnection(folder.connectionFile, folder.cluster);
    const others = connection.users.filter(({ id }) => id !== us.id);
    if (others.length > 0) return writeConnection(folder.connectionFile, { ...connection, users: others });
    // ours may have died since, and another start have put a new one in its place
    const current = isRunning(server.process) ? server : (await findServer(folder, binaries))?.server;
    if (current) await stopServer(current.process);
    fs.rmSync(folder.connectionFile, { force: true });
  });
}
