/** Listening, with an answer instead of an event when the port is taken. */
import { once } from 'node:events';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { REQUEST_SECONDS } from '@garboard/api/request/limits.ts';
import { createAdaptorServer } from '@hono/node-server';
import { answerUnreadable } from './unreadable.ts';

export type Listening = { readonly address: string; stop(): Promise<void> };
type Fetch = (request: Request) => Response | Promise<Response>;

const PATIENCE_MS = REQUEST_SECONDS * 1000;

/** Rejects with `EADDRINUSE` in words. `patienceMs`: how long a request may take to arrive. */
export async function listen(fetch: Fetch, port: number, host: string, patienceMs = PATIENCE_MS): Promise<Listening> {
  const serverOptions = {
    requestTimeout: patienceMs,
    headersTimeout: patienceMs,
    connectionsCheckingInterval: Math.min(1000, patienceMs),
  };
  const server = createAdaptorServer({ fetch, createServer, serverOptions }) as Server;
  answerUnreadable(server);
  server.listen(port, host);
  try {
    await once(server, 'listening');
  } catch (fault) {
    if ((fault as NodeJS.ErrnoException).code === 'EADDRINUSE')
      throw new Error(`port ${port} is taken: set PORT to another one`);
    throw fault;
  }
  const { port: taken } = server.address() as AddressInfo;
  const shown = host.includes(':') ? `[${host}]` : host;
  return { address: `http://${shown}:${taken}`, stop: () => stop(server) };
}

/** Lets requests under way finish. */
async function stop(server: Server): Promise<void> {
  const closed = once(server, 'close');
  server.close();
  server.closeIdleConnections();
  await closed;
}
