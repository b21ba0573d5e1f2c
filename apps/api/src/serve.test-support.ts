/** An app on a port of its own, as the host puts it there. */
import { once } from 'node:events';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { createAdaptorServer } from '@hono/node-server';
import type { createApp } from './app.ts';

export type Served = { readonly address: string; close(): Promise<void> };

export async function serve({ fetch }: ReturnType<typeof createApp>): Promise<Served> {
  const server = createAdaptorServer({ fetch, createServer }) as Server;
  server.listen(0, '127.0.0.1');
  await once(server, 'listening');
  const { port } = server.address() as AddressInfo;
  const close = async () => {
    server.close();
    server.closeAllConnections();
  };
  return { address: `http://127.0.0.1:${port}`, close };
}
