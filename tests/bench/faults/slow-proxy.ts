/** A loopback proxy before a server, which can slow what passes and cut every connection. */

import { once } from 'node:events';
import { connect, createServer, type Socket } from 'node:net';

export interface SlowProxy {
  readonly port: number;
  /** Milliseconds by which each answer of the server comes later. */
  delay: number;
  /** Whether the next answers are swallowed: the server has done what it was told, and nobody hears of it. */
  deaf: boolean;
  /** Ends every connection there is. */
  cut(): void;
  close(): Promise<void>;
}

/** A proxy to a port of this machine. */
export async function slowProxy(target: number): Promise<SlowProxy> {
  const open = new Set<Socket>();
  const server = createServer((near) => {
    const far = connect({ host: '127.0.0.1', port: target });
    for (const [one, other] of [
      [near, far],
      [far, near],
    ] as const) {
      open.add(one);
      one.on('error', () => {});
      one.once('close', () => {
        open.delete(one);
        other.destroy();
      });
    }
    near.on('data', (data) => far.write(data));
    far.on('data', (data) => {
      if (proxy.deaf) return;
      if (proxy.delay === 0) near.write(data);
      // Timers of one length fire in order, so answers stay in order.
      else setTimeout(() => near.writable && near.write(data), proxy.delay);
    });
  }).listen(0, '127.0.0.1');
  await once(server, 'listening');
  const address = server.address();
  if (address === null || typeof address === 'string') throw new Error('no port');
  const cut = (): void => {
    for (const socket of open) socket.destroy();
  };
  const proxy: SlowProxy = {
    port: address.port,
    delay: 0,
    deaf: false,
    cut,
    async close() {
      server.close();
      cut();
      await once(server, 'close');
    },
  };
  return proxy;
}
