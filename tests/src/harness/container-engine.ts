/** Is a container engine answering, and which images has it? Asked in a few milliseconds where there is none. */
import { existsSync } from 'node:fs';
import { get, type RequestOptions } from 'node:http';
import { homedir } from 'node:os';
import path from 'node:path';

const PATIENCE_MS = 1500;

export type Engine = { hasImage(name: string): Promise<boolean> };

/** The engine that answers, or `null`. */
export async function findEngine(): Promise<Engine | null> {
  for (const address of addresses()) {
    if ((await status(address, '/_ping')) !== 200) continue;
    return { hasImage: async (name) => (await status(address, `/images/${name}/json`)) === 200 };
  }
  return null;
}

function addresses(): RequestOptions[] {
  const named = process.env.DOCKER_HOST;
  if (named?.startsWith('unix://')) return [{ socketPath: named.slice('unix://'.length) }];
  if (named) return [{ host: new URL(named).hostname, port: new URL(named).port || 2375 }];
  return sockets()
    .filter((socketPath) => existsSync(socketPath))
    .map((socketPath) => ({ socketPath }));
}

function sockets(): string[] {
  const runtime = process.env.XDG_RUNTIME_DIR;
  return [
    '/var/run/docker.sock',
    ...(runtime ? [path.join(runtime, 'docker.sock')] : []),
    path.join(homedir(), '.docker/run/docker.sock'),
    path.join(homedir(), '.docker/desktop/docker.sock'),
  ];
}

function status(address: RequestOptions, target: string): Promise<number | null> {
  return new Promise((resolve) => {
    const request = get({ ...address, path: target, timeout: PATIENCE_MS }, (response) => {
      response.resume();
      resolve(response.statusCode ?? null);
    });
    request.once('timeout', () => request.destroy());
    request.once('error', () => resolve(null));
  });
}
