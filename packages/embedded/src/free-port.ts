import { once } from 'node:events';
import net from 'node:net';

/** `wanted` if nobody listens on it at 127.0.0.1, else any free port. Somebody may still be quicker: the caller retries. */
export async function freePort(wanted: number): Promise<number> {
  const listener = net.createServer();
  listener.listen(wanted, '127.0.0.1');
  try {
    await once(listener, 'listening');
  } catch (error) {
    if (wanted === 0) throw error;
    return freePort(0);
  }
  const { port } = listener.address() as net.AddressInfo;
  listener.close();
  await once(listener, 'close');
  return port;
}
