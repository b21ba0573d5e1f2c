/** The program as a user starts it, in a process of its own, so that it can be killed. */
import { type ChildProcess, execFile, spawn } from 'node:child_process';
import { once } from 'node:events';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';

const ROOT = fileURLToPath(new URL('../../../', import.meta.url));
const run = promisify(execFile);

export type GarboardProcess = {
  readonly address: string;
  readonly process: ChildProcess;
  /** What it has said so far. */
  output(): string;
  /** Sends the signal and waits for the end; answers with the exit code, `null` when killed. */
  end(signal: NodeJS.Signals): Promise<number | null>;
};

export type Settings = Readonly<Record<string, string>>;

/** For a start that is expected to end by itself, or soon after it is told to stop at the words `stopAt`. */
export async function garboardThatEnds(settings: Settings, stopAt?: string): Promise<{ code: number; output: string }> {
  const child = spawnGarboard(settings);
  let output = '';
  const hear = (data: Buffer) => {
    output += data;
    if (stopAt && String(data).includes(stopAt)) child.kill('SIGTERM');
  };
  child.stdout.on('data', hear);
  child.stderr.on('data', hear);
  const forced = setTimeout(() => child.kill('SIGKILL'), 60_000);
  const [code] = (await once(child, 'exit')) as [number];
  clearTimeout(forced);
  return { code, output };
}

/** The tests ask more often in a minute than anybody else would. */
const UNHURRIED: Settings = { RATE_LIMIT_CREDENTIAL: '0', RATE_LIMIT_ADDRESS: '0' };

function spawnGarboard(settings: Settings) {
  return spawn(process.execPath, ['apps/host/src/main.ts'], {
    cwd: ROOT,
    env: { ...process.env, PORT: '0', ...UNHURRIED, ...settings },
    stdio: ['ignore', 'pipe', 'pipe'],
  });
}

/** Rejects with what it said when it ends before it is ready. */
export async function startGarboardProcess(settings: Settings): Promise<GarboardProcess> {
  const child = spawnGarboard(settings);
  let output = '';
  const address = await new Promise<string>((resolve, reject) => {
    const hear = (data: Buffer) => {
      output += data;
      const ready = /^Ready at (\S+)$/m.exec(output);
      if (ready?.[1]) resolve(ready[1]);
    };
    child.stdout.on('data', hear);
    child.stderr.on('data', hear);
    child.once('exit', (code) => reject(new Error(`ended with ${code}: ${output}`)));
  });
  return { address, process: child, output: () => output, end: (signal) => end(child, signal) };
}

async function end(child: ChildProcess, signal: NodeJS.Signals): Promise<number | null> {
  const exited = once(child, 'exit') as Promise<[number | null]>;
  child.kill(signal);
  return (await exited)[0];
}

/** `npm run --silent admin -- …` without npm; answers with what it printed. */
export async function administer(settings: Settings, ...command: readonly string[]): Promise<string> {
  const { stdout } = await run(process.execPath, ['apps/host/src/admin.ts', ...command], {
    cwd: ROOT,
    env: { ...process.env, ...settings },
  });
  return stdout.trim();
}
