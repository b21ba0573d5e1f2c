/** The running server: found, started, stopped. */
import { type ChildProcess, spawn } from 'node:child_process';
import type net from 'node:net';
import path from 'node:path';
import readline from 'node:readline';
import { setTimeout as sleep } from 'node:timers/promises';
import { ask } from './answer.ts';
import { freePort } from './free-port.ts';
import { commandLine, isRunning, markOf, type ProcessMark, readOrEmpty } from './process-table.ts';
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
/** Without a sign of life for this long we give up. A server that says it is recovering is alive, however long it takes. */
const SILENCE_MS = 60_000;
const KEPT_LINES = 40;
const TRIES = 20;
const PAUSE_MS = 250;

/** The server that runs on `cluster` already, waited for if it is still starting; `null` when there is none. */
export async function findRunning(cluster: string, password: string): Promise<Server | null> {
  for (let deadline = Date.now() + SILENCE_MS; Date.now() < deadline; await sleep(POLL_MS)) {
    const noted = readPostmasterFile(cluster);
    if (!noted) return null;
    const answer = await ask(cluster, noted.port, password);
    const process = markOf(answer.kind === 'ours' ? answer.pid : noted.pid);
    if (answer.kind === 'ours' && process) return { port: noted.port, process };
    if (answer.kind === 'not_yet') deadline = Date.now() + SILENCE_MS;
    else if (!serves(commandLine(noted.pid), cluster)) return null;
  }
  throw new Error(`A PostgreSQL server holds ${cluster} but does not answer.`);
}

export async function launch(as: RunAs, postgres: ServerProgram, options: LaunchOptions): Promise<Server> {
  for (let attempt = 1, wanted = options.port; ; attempt++) {
    const port = await freePort(wanted);
    const outcome = await launchOnce(as, postgres, { ...options, port });
    if (outcome.kind === 'running') return outcome.server;
    const lines = outcome.lines.join('\n');
    const tooEarly = /shared memory block|lock file "postmaster.pid"/.test(lines); // the last server's children are not gone yet
    const portTaken = /could not bind|could not create any TCP\/IP sockets/.test(lines);
    if (attempt === TRIES || !(tooEarly || portTaken)) throw new Error(`PostgreSQL did not start:\n${lines}`);
    if (portTaken) wanted = 0;
    else await sleep(PAUSE_MS);
    const meanwhile = await findRunning(options.cluster, options.password);
    if (meanwhile) return meanwhile;
  }
}

/** Fast shutdown; then, if that takes too long, one without farewells, from which the next start recovers. Waits for the end. */
export async function stopServer(process: ProcessMark, patienceMs = 5000): Promise<void> {
  for (const signal of ['SIGINT', 'SIGQUIT', 'SIGKILL'] as const) {
    if (await endsAfter(process, signal, patienceMs)) return;
  }
  throw new Error(`The PostgreSQL server (process ${process.pid}) does not end.`);
}

type Outcome = { kind: 'running'; server: Server } | { kind: 'ended'; lines: string[] };

async function launchOnce(as: RunAs, postgres: ServerProgram, options: LaunchOptions): Promise<Outcome> {
  const { cluster, port, password } = options;
  const { file, args, options: how } = command(as, postgres, serverArguments(options), disownedPid(cluster));
  // a process group of its own: Ctrl-C in the terminal reaches us, and we stop the server when our work is done
  const child = spawn(file, args, { ...how, stdio: ['ignore', 'ignore', 'pipe'], detached: true });
  const lines = keepLines(child, options.log);
  const ended = new Promise<void>((resolve) => child.once('close', () => resolve()));
  const running = await untilReady(child, () => ask(cluster, port, password));
  if (running) return { kind: 'running', server: { port, process: running } };
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

async function untilReady(child: ChildProcess, askIt: () => ReturnType<typeof ask>): Promise<ProcessMark | null> {
  for (let deadline = Date.now() + SILENCE_MS; Date.now() < deadline; await sleep(POLL_MS)) {
    if (child.pid === undefined || child.exitCode !== null || child.signalCode !== null) return null;
    const answer = await askIt();
    if (answer.kind === 'ours' && answer.pid === child.pid) {
      letGo(child);
      return markOf(child.pid);
    }
    if (answer.kind === 'not_yet') deadline = Date.now() + SILENCE_MS;
  }
  return null;
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

/**
 * PostgreSQL does not start while the pid in `postmaster.pid` is alive, even if that number belongs to something else by
 * now. This variable is how pg_ctl tells it that a pid is no server; its own check for processes left over stays in force.
 * A postgres process that does not say which folder it serves gets the benefit of the doubt.
 */
function disownedPid(cluster: string): Record<string, string> {
  const noted = readPostmasterFile(cluster);
  if (!noted || process.platform === 'win32') return {}; // Windows does not tell what a process is
  const program = commandLine(noted.pid);
  const mayServe = serves(program, cluster) || (program.includes('postgres') && !program.includes(' -D '));
  return mayServe ? {} : { PG_GRANDPARENT_PID: String(noted.pid) };
}

function serves(program: string, cluster: string): boolean {
  return program.includes(` -D ${cluster} `);
}

/** What the server notes about itself, line by line: pid, folder, start, port, … */
function readPostmasterFile(cluster: string): { pid: number; port: number } | null {
  const [pid, , , port] = readOrEmpty(path.join(cluster, 'postmaster.pid')).split('\n').map(Number);
  return pid && port ? { pid, port } : null;
}

async function endsAfter(mark: ProcessMark, signal: NodeJS.Signals, patienceMs: number): Promise<boolean> {
  if (!isRunning(mark)) return true;
  process.kill(mark.pid, signal);
  for (const deadline = Date.now() + patienceMs; Date.now() < deadline; await sleep(POLL_MS)) {
    if (!isRunning(mark)) return true;
  }
  return false;
}
