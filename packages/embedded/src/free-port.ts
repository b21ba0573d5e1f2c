import { once } from 'node:events';
import net from 'node:net';

/** A port at 127.0.0.1 that nobody listens on. Somebody may still be quicker than the caller. */
export async function freePort(): Promise<number> {
  const listener = net.createServer().listen(0, '127.0.0.1');
  await once(listener, 'listening');
  const { port } = listener.address() as net.AddressInfo;
  listener.close();
  await once(listener, 'close');
  return port;
}
