/** How often one link is opened and sent by, and anything from one address: counted in memory, and what is sent by all processes together. */

import { RateLimiterMemory } from 'rate-limiter-flexible';
import type { Ports } from '../../chat/ports.ts';
import { A_MINUTE } from './limits.ts';
import type { WebPorts } from './ports.ts';

/** Allowances of this process; what is sent is counted by the store too, where it counts. */
export function allowanceOf(counted?: Ports['allowed']): WebPorts['allow'] {
  const of = (points: number): RateLimiterMemory => new RateLimiterMemory({ points, duration: 60 });
  const each = { link: of(A_MINUTE.link), address: of(A_MINUTE.address), deed: of(A_MINUTE.deed) } as const;
  return async (what, key) => {
    // It rejects with what is left where none is, and never otherwise.
    const left = await each[what].consume(key).catch(() => undefined);
    if (left === undefined || what !== 'deed' || !counted) return left !== undefined;
    return (await counted({ person: `page:${key}` }, 1)).again === 0;
  };
}

/** Whether requests from an address are counted: behind a proxy on this machine or its network stand many people. */
export function isCounted(address: string | undefined): address is string {
  if (address === undefined) return false;
  const plain = address.replace(/^::ffff:/i, '');
  return !/^(?:127\.|10\.|192\.168\.|172\.(?:1[6-9]|2\d|3[01])\.|169\.254\.|::1$|f[cd][0-9a-f]{2}:|fe80:)/i.test(plain);
}
