/** The one HTTP server: platforms register fetch handlers by path, beside health probes and metrics. */

import { createHash, timingSafeEqual } from 'node:crypto';
import type { Server } from 'node:http';
import { type HttpBindings, serve } from '@hono/node-server';
import { type Context, Hono } from 'hono';
import { bodyLimit } from 'hono/body-limit';
import { matchedRoutes } from 'hono/route';
import { asRequest } from '../chat/request-id.ts';
import type { PlatformRoute } from '../platforms/platform.ts';
import type { Metrics } from './metrics.ts';

/** What is answered at a path. */
export type Route = PlatformRoute;

/** A sender that dribbles must not hold a connection for good; Node looks every half minute if it is not told to look more often. */
const DRIBBLING = { headersTimeout: 10_000, requestTimeout: 20_000, connectionsCheckingInterval: 2_000 } as const;

/** What `routed` gives and `listen` serves. */
type Served = Hono<{ Bindings: Partial<HttpBindings> }>;

/** Bytes of a body that any route reads; platforms send far less. */
const LARGEST_BODY = 1024 * 1024;

/** Told of each request that was answered: by its route's pattern, never by its path. */
export type HttpAnswer = (route: string, method: string, status: number, milliseconds: number) => void;

/** The server's answers, without a port: a fault in a route is told to `fault` and answered with 500. */
export function routed(routes: readonly Route[], fault: (cause: unknown) => void, answered?: HttpAnswer): Served {
  const app = new Hono<{ Bindings: Partial<HttpBindings> }>();
  app.use((_, next) => asRequest(next));
  if (answered)
    app.use(async (context, next) => {
      const began = performance.now();
      await next();
      const { method } = context.req;
      const known = ['GET', 'HEAD', 'POST'].includes(method) ? method : 'OTHER';
      answered(patternOf(routes, context), known, context.res.status, performance.now() - began);
    });
  app.use(bodyLimit({ maxSize: LARGEST_BODY, onError: (context) => context.text('Too large.', 413) }));
  for (const { method, path, handle } of routes) {
    app.on(method, path, ({ req, env }) => handle(req.raw, env?.incoming?.socket.remoteAddress));
  }
  app.notFound((context) => context.text('Not found.', 404));
  app.onError((cause, context) => {
    // Whoever went away before all was sent hears nothing more, and it is no fault of ours.
    if (!(context.env?.incoming?.destroyed && 'code' in cause && cause.code === 'ECONNRESET')) fault(cause);
    return context.text('Something went wrong on our side.', 500);
  });
  return app;
}

/** The pattern that the request was routed by; `/*` for none of ours. */
function patternOf(routes: readonly Route[], context: Context): string {
  const matched = new Set(matchedRoutes(context).map(({ path }) => path));
  return routes.find(({ path }) => matched.has(path))?.path ?? '/*';
}

/** A server that listens; `port` is the one taken where 0 was asked. */
export interface Listening {
  readonly port: number;
  /** Takes no more, lets what runs finish, and resolves when all is done. */
  close(): Promise<void>;
  /** Ends what runs as well. */
  cut(): void;
}

/** Listens. Where the port is taken it takes another; undefined where it cannot listen at all, and why. */
export async function listenNear(
  app: Served,
  where: Parameters<typeof listen>[1],
): Promise<{ readonly server?: Listening; readonly trouble?: unknown }> {
  try {
    return { server: await listen(app, where) };
  } catch (trouble) {
    try {
      return { server: await listen(app, { ...where, port: 0 }), trouble };
    } catch {
      return { trouble };
    }
  }
}

/** Listens. Rejects when the port is taken or not allowed. */
export function listen(app: Served, where: { readonly host: string; readonly port: number }): Promise<Listening> {
  return new Promise((resolve, reject) => {
    const given = { fetch: app.fetch, hostname: where.host, port: where.port, serverOptions: DRIBBLING };
    const server = serve(given, ({ port }) =>
      resolve({ port, close: () => closed(server), cut: () => server.closeAllConnections() }),
    ) as Server;
    server.once('error', reject);
  });
}

function closed(server: Server): Promise<void> {
  return new Promise((resolve, reject) => {
    // A connection that is kept open is idle only once its last answer is out.
    const sweep = setInterval(() => server.closeIdleConnections(), 50);
    server.close((cause) => {
      clearInterval(sweep);
      if (cause) reject(cause);
      else resolve();
    });
    server.closeIdleConnections();
  });
}

// What an orchestrator and Prometheus ask: whether it lives, whether it is ready, and its figures.

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
