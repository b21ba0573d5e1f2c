/** The running server: found, or started. */
import { type ChildProcess, spawn } from 'node:child_process';
import type net from 'node:net';
import readline from 'node:readline';
import { setTimeout as sleep } from 'node:timers/promises';
import { askWho } from './ask-who.ts';
import { freePort } from './free-port.ts';
import { disownedPid, readPostmasterNote, serves } from './postmaster-file.ts';
import { markOf, type ProcessMark } from './process-table.ts';
import { command, type RunAs, type ServerProgram } from './run-as.ts';

export type Server = { port: number; process: ProcessMark };

export type LaunchOptions = {
  cluster: string;
  password: string;
  port: number;
  settings: Record<string, string>;
  log: (line: string) => void;
};

const POLL_MS = 25;
/** For how long a server may keep silent. One that says it is starting or recovering may take as long as it takes. */
const SILENCE_MS = 60_000;
const KEPT_LINES = 40;
const TRIES = 20;
const PAUSE_MS = 250;

/** The server that runs on `cluster` already, waited for if it is still starting; `null` when there is none. */
export async function findRunning(cluster: string, password: string): Promise<Server | null> {
  for (let deadline = Date.now() + SILENCE_MS; Date.now() < deadline; await sleep(POLL_MS)) {
    const note = readPostmasterNote(cluster);
    if (!note) return null;
    const running = note.ready ? await answering(cluster, note.port, password) : null;
    if (running) return { port: note.port, process: running };
    if (!serves(note, cluster)) return null;
    if (!note.ready) deadline = Date.now() + SILENCE_MS;
  }
  throw new Error(`A PostgreSQL server holds ${cluster} but does not answer.`);
}

export async function launch(as: RunAs, postgres: ServerProgram, options: LaunchOptions): Promise<Server> {
  for (let attempt = 1, wanted = options.port; ; attempt++) {
    const port = wanted === 0 ? await freePort() : wanted;
    const outcome = await launchOnce(as, postgres, { ...options, port });
    if (outcome.kind === 'running') return outcome.server;
    const lines = outcome.lines.join('\n');
    const tooEarly = /shared memory block|lock file "postmaster.pid"/.test(lines); // the last server's children are not gone yet
    const portTaken = /could not create any TCP\/IP sockets/.test(lines);
    if (attempt === TRIES || !(tooEarly || portTaken)) throw new Error(`PostgreSQL did not start:\n${lines}`);
    if (portTaken) wanted = 0;
    else await sleep(PAUSE_MS);
    const meanwhile = await findRunning(options.cluster, options.password);
    if (meanwhile) return meanwhile;
  }
}

type Outcome = { kind: 'running'; server: Server } | { kind: 'ended'; lines: string[] };

async function launchOnce(as: RunAs, postgres: ServerProgram, options: LaunchOptions): Promise<Outcome> {
  const env = disownedPid(options.cluster);
  const { file, args, options: how } = command(as, postgres, serverArguments(options), env);
  // a process group of its own: Ctrl-C in the terminal reaches us, and we stop the server when our work is done
  const child = spawn(file, args, { ...how, stdio: ['ignore', 'ignore', 'pipe'], detached: true });
  const lines = keepLines(child, options.log);
  const ended = new Promise<void>((resolve) => child.once('close', () => resolve()));
  const running = await untilReady(child, options);
  if (running) return { kind: 'running', server: { port: options.port, process: running } };
  child.kill('SIGKILL');
  await ended;
  return { kind: 'ended', lines };
}

/** Later words win, so nobody's settings open the server to the network. */
function serverArguments({ cluster, port, settings }: LaunchOptions): string[] {
  const fixed = {
    max_connections: '60',
    ...settings,
    ...{ listen_addresses: '127.0.0.1', unix_socket_directories: '', timezone: 'UTC', log_timezone: 'UTC' },
  };
  return [
    '-D',
    cluster,
    '-p',
    String(port),
    ...Object.entries(fixed).flatMap(([name, value]) => ['-c', `${name}=${value}`]),
  ];
}

async function untilReady(child: ChildProcess, options: LaunchOptions): Promise<ProcessMark | null> {
  const { cluster, port, password } = options;
  for (let deadline = Date.now() + SILENCE_MS; Date.now() < deadline; await sleep(POLL_MS)) {
    if (child.pid === undefined || child.exitCode !== null || child.signalCode !== null) return null;
    const note = readPostmasterNote(cluster);
    if (note?.pid !== child.pid) continue;
    const running = note.ready ? await answering(cluster, port, password) : null;
    if (running) {
      letGo(child);
      return running;
    }
    if (!note.ready) deadline = Date.now() + SILENCE_MS;
  }
  return null;
}

async function answering(cluster: string, port: number, password: string): Promise<ProcessMark | null> {
  const pid = await askWho(cluster, port, password);
  return pid === null ? null : markOf(pid);
}

/** The server must not keep our process alive by itself. */
function letGo(child: ChildProcess): void {
  child.unref();
  (child.stderr as net.Socket | null)?.unref();
}

function keepLines(child: ChildProcess, log: (line: string) => void): string[] {
  const lines: string[] = [];
  const keep = (line: string) => {
    if (lines.push(line) > KEPT_LINES) lines.shift();
    log(line);
  };
  child.once('error', (error) => keep(error.message));
  if (child.stderr) readline.createInterface({ input: child.stderr }).on('line', keep);
  return lines;
}
