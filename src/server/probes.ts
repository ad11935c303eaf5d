/** What an orchestrator and Prometheus ask: whether it lives, whether it is ready, and its figures. */

import { createHash, timingSafeEqual } from 'node:crypto';
import type { Metrics } from './metrics.ts';
import type { Route } from './server.ts';

/** Why it is not ready, in a word each; none when it is. */
export type Readiness = () => Promise<readonly string[]>;

/** Milliseconds that readiness is waited for: whoever asks gives up soon after. */
const PATIENCE = 2_000;

/** `/healthz`: that the event loop answers. `/readyz`: 200, or 503 and what is amiss. */
export function probes(ready: Readiness): readonly Route[] {
  return [
    { method: 'GET', path: '/healthz', handle: () => plain('alive\n', 200) },
    {
      method: 'GET',
      path: '/readyz',
      handle: async () => {
        const amiss = await Promise.race([ready(), late()]);
        return amiss.length === 0 ? plain('ready\n', 200) : plain(`not ready: ${amiss.join(', ')}\n`, 503);
      },
    },
  ];
}

/** `/metrics`; with a token only for whoever sends it as a bearer. */
export function metricsRoute(metrics: Metrics, token: string): Route {
  return {
    method: 'GET',
    path: '/metrics',
    handle: async ({ headers }) => {
      if (token !== '' && !sameText(headers.get('authorization') ?? '', `Bearer ${token}`))
        return plain('Not found.', 404);
      const { type, text } = await metrics.read();
      return new Response(text, { headers: { 'content-type': type, 'cache-control': 'no-store' } });
    },
  };
}

/** Takes the same time whatever is alike. */
function sameText(one: string, other: string): boolean {
  const [a, b] = [one, other].map((text) => createHash('sha256').update(text).digest());
  return a !== undefined && b !== undefined && timingSafeEqual(a, b);
}

async function late(): Promise<readonly string[]> {
  await new Promise((resolve) => setTimeout(resolve, PATIENCE).unref());
  return ['store'];
}

function plain(text: string, status: number): Response {
  return new Response(text, {
    status,
    headers: { 'content-type': 'text/plain; charset=utf-8', 'cache-control': 'no-store' },
  });
}
