/** The HTTP server: platforms register fetch handlers by path, next to health probes and metrics. */

import { createHash, timingSafeEqual } from 'node:crypto';
import { IncomingMessage, type Server, ServerResponse } from 'node:http';
import { type HttpBindings, serve } from '@hono/node-server';
import { RESPONSE_ALREADY_SENT } from '@hono/node-server/utils/response';
import { type Context, Hono } from 'hono';
import { bodyLimit } from 'hono/body-limit';
import { matchedRoutes } from 'hono/route';
import { asRequest } from '../chat/request-id.ts';
import type { NodeExchange, PlatformRoute } from '../platforms/platform.ts';
import type { Metrics } from './metrics.ts';

export type Route = PlatformRoute;

/** A slow sender must not hold a connection forever; Node's default is to check every 30 seconds. */
const DRIBBLING = { headersTimeout: 10_000, requestTimeout: 20_000, connectionsCheckingInterval: 2_000 } as const;

type Served = Hono<{ Bindings: Partial<HttpBindings> }>;

/** Bytes of a request body; platforms send far less. */
const LARGEST_BODY = 1024 * 1024;

/** Called after each request with its route's pattern, never its path. */
export type HttpAnswer = (route: string, method: string, status: number, milliseconds: number) => void;

/** The app without a port. An error in a route is passed to `fault` and answered with 500. */
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
    app.on(method, path, ({ req, env }) => handle(req.raw, env?.incoming?.socket.remoteAddress, exchangeOf(env)));
  }
  app.notFound((context) => context.text('Not found.', 404));
  app.onError((cause, context) => {
    // A client that disconnects early isn't a fault of ours.
    if (!(context.env?.incoming?.destroyed && 'code' in cause && cause.code === 'ECONNRESET')) fault(cause);
    return context.text('Something went wrong on our side.', 500);
  });
  return app;
}

/** Node's own side of a request over HTTP/1, which is all that this server speaks. */
function exchangeOf(env: Partial<HttpBindings> | undefined): NodeExchange | undefined {
  const { incoming, outgoing } = env ?? {};
  return incoming instanceof IncomingMessage && outgoing instanceof ServerResponse
    ? { incoming, outgoing, answered: RESPONSE_ALREADY_SENT }
    : undefined;
}

/** `/*` if no route matched. */
function patternOf(routes: readonly Route[], context: Context): string {
  const matched = new Set(matchedRoutes(context).map(({ path }) => path));
  return routes.find(({ path }) => matched.has(path))?.path ?? '/*';
}

/** `port` is the actual one if 0 was requested. */
export interface Listening {
  readonly port: number;
  /** Stops accepting, lets running requests finish, and resolves when they have. */
  close(): Promise<void>;
  /** Ends running requests too. */
  cut(): void;
}

/** Uses another port if this one is taken; undefined, with the reason, if it can't listen at all. */
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

/** Rejects if the port is taken or not allowed. */
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
    // A keep-alive connection is idle only after its last response is sent.
    const sweep = setInterval(() => server.closeIdleConnections(), 50);
    server.close((cause) => {
      clearInterval(sweep);
      if (cause) reject(cause);
      else resolve();
    });
    server.closeIdleConnections();
  });
}

/** Why it isn't ready, one word each; empty if it is. */
export type Readiness = () => Promise<readonly string[]>;

/** Milliseconds to wait for readiness: probes give up soon after. */
const PATIENCE = 2_000;

/** `/healthz`: the event loop responds. `/readyz`: 200, or 503 with the reasons. */
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

/** `/metrics`; with a token, only for requests that send it as a bearer. */
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

/** Constant time. */
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
