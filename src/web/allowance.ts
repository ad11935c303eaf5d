/** How often one link is opened, and anything from one address: counted in memory. */

import { RateLimiterMemory } from 'rate-limiter-flexible';
import { A_MINUTE } from './limits.ts';
import type { WebPorts } from './ports.ts';

/** Allowances of this process. */
export function allowanceInMemory(): WebPorts['allow'] {
  const each = {
    link: new RateLimiterMemory({ points: A_MINUTE.link, duration: 60 }),
    address: new RateLimiterMemory({ points: A_MINUTE.address, duration: 60 }),
  } as const;
  return async (of, key) => {
    // It rejects with what is left where none is, and never otherwise.
    const left = await each[of].consume(key).catch(() => undefined);
    return left !== undefined;
  };
}

/** Whether requests from an address are counted: behind a proxy on this machine or its network stand many people. */
export function isCounted(address: string | undefined): address is string {
  if (address === undefined) return false;
  const plain = address.replace(/^::ffff:/i, '');
  return !/^(?:127\.|10\.|192\.168\.|172\.(?:1[6-9]|2\d|3[01])\.|169\.254\.|::1$|f[cd][0-9a-f]{2}:|fe80:)/i.test(plain);
}
