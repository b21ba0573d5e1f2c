/** Starting the server from a process of its own: as somebody else, or to be killed. */
import { type ChildProcess, spawn, spawnSync } from 'node:child_process';
import { once } from 'node:events';
import readline from 'node:readline';
import { fileURLToPath } from 'node:url';
import type { StartOptions } from '../start-postgres.ts';

export type Started = { url: string; port: number; owner: boolean };
export type Failed = { failed: { name: string; message: string } };

/** `prefix`: a command that becomes somebody else before it runs the rest. `program`: another copy of the starter. */
export type Manner = { prefix?: string[]; program?: string };

const STARTER = fileURLToPath(new URL('./child-starter.ts', import.meta.url));

export class StarterProcess {
  readonly child: ChildProcess;
  readonly #lines: AsyncIterator<string>;

  constructor(options: StartOptions, { prefix = [], program = STARTER }: Manner = {}) {
    const [file = '', ...args] = [...prefix, process.execPath, program, JSON.stringify(options)];
    this.child = spawn(file, args, { cwd: '/', stdio: ['pipe', 'pipe', 'inherit'] });
    if (!this.child.stdout) throw new Error('no output to read');
    this.#lines = readline.createInterface({ input: this.child.stdout })[Symbol.asyncIterator]();
  }

  async started(): Promise<Started> {
    const said = (await this.#nextLine()) as Started | Failed;
    if ('failed' in said) throw new Error(said.failed.message);
    return said;
  }

  async failed(): Promise<Failed['failed']> {
    return ((await this.#nextLine()) as Failed).failed;
  }

  async stop(): Promise<void> {
    this.child.stdin?.write('stop\n');
    await this.#nextLine();
  }

  async kill(): Promise<void> {
    this.child.kill('SIGKILL');
    if (this.child.exitCode === null && this.child.signalCode === null) await once(this.child, 'exit');
  }

  async #nextLine(): Promise<unknown> {
    const { value } = await this.#lines.next();
    return JSON.parse(value ?? '{"failed":{"name":"","message":"the starter ended without a word"}}');
  }
}

/** Becomes the user with this number; keeps the right to read everything only where this checkout lies in a closed folder. */
export function becoming(uid: number): string[] {
  const plain = ['setpriv', `--reuid=${uid}`, `--regid=${uid}`, '--clear-groups'];
  const [file = '', ...args] = [...plain, process.execPath, '--check', STARTER];
  if (spawnSync(file, args, { cwd: '/' }).status === 0) return plain;
  const capabilities = '+dac_read_search';
  return [...plain, '--securebits=+no_setuid_fixup', `--inh-caps=${capabilities}`, `--ambient-caps=${capabilities}`];
}
