/** The one HTTP server: platforms hand it fetch handlers by path. */

import type { Server } from 'node:http';
import { serve } from '@hono/node-server';
import { Hono } from 'hono';
import { bodyLimit } from 'hono/body-limit';

/** What a platform answers at a path; `*` at its end takes everything below. */
export interface Route {
  readonly method: 'GET' | 'POST';
  readonly path: string;
  handle(request: Request): Promise<Response> | Response;
}

/** Bytes of a body that any route reads; platforms send far less. */
const LARGEST_BODY = 1024 * 1024;

/** The server's answers, without a port: a fault in a route is told to `fault` and answered with 500. */
export function routed(routes: readonly Route[], fault: (cause: unknown) => void): Hono {
  const app = new Hono();
  app.use(bodyLimit({ maxSize: LARGEST_BODY, onError: (context) => context.text('Too large.', 413) }));
  for (const { method, path, handle } of routes) app.on(method, path, (context) => handle(context.req.raw));
  app.notFound((context) => context.text('Not found.', 404));
  app.onError((cause, context) => {
    fault(cause);
    return context.text('Something went wrong on our side.', 500);
  });
  return app;
}

/** A server that listens; `port` is the one taken where 0 was asked. */
export interface Listening {
  readonly port: number;
  /** Takes no more, lets what runs finish, and resolves when all is done. */
  close(): Promise<void>;
}

/** Listens. Rejects when the port is taken or not allowed. */
export function listen(app: Hono, where: { readonly host: string; readonly port: number }): Promise<Listening> {
  return new Promise((resolve, reject) => {
    const server = serve({ fetch: app.fetch, hostname: where.host, port: where.port }, ({ port }) =>
      resolve({ port, close: () => closed(server) }),
    ) as Server;
    server.once('error', reject);
    // A sender that dribbles must not hold a connection for good.
    server.headersTimeout = 10_000;
    server.requestTimeout = 20_000;
  });
}

function closed(server: Server): Promise<void> {
  return new Promise((resolve, reject) => {
    server.close((cause) => (cause ? reject(cause) : resolve()));
    server.closeIdleConnections();
  });
}
