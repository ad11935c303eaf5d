/** A Discord on the loopback: its gateway and its REST interface, strict about tokens, deadlines of use and every payload. */

import { createServer, type IncomingMessage } from 'node:http';
import type { AddressInfo } from 'node:net';
import type { APIInteraction } from 'discord.js';
import { fakeGateway } from './loopback-gateway.ts';
import { type Captured, fakeRest, type Refusal, type RequestListener, type RestTerms } from './loopback-rest.ts';

export interface Loopback {
  /** For the client's `rest.api`. */
  readonly api: string;
  /** Everything asked of the REST interface, in order. */
  readonly captured: readonly Captured[];
  /** What Discord would have refused in what was sent. */
  readonly flaws: readonly string[];
  /** Makes an interaction known and sends it over the gateway, `times` over. */
  dispatch(interaction: APIInteraction, times?: number): void;
  /** Sends an event about a message over the gateway. */
  message(event: 'CREATE' | 'UPDATE' | 'DELETE', data: unknown): void;
  /** Makes an interaction known without sending it: it comes by HTTP. */
  know(interaction: APIInteraction): void;
  /** The next requests that match, in order, once they have come; those already taken are not given again. */
  next(matching: (one: Captured) => boolean): Promise<Captured>;
  /** Refuses the next request that matches. */
  refuse(refusal: Refusal): void;
  /** Ends every gateway connection with a code. */
  drop(code: number): void;
  /** Told of each request as it comes. */
  onRequest(listener: RequestListener): void;
  /** How connections began: `identify` or `resume`. */
  readonly connections: readonly string[];
  /** Resolves when there have been so many connections. */
  connected(count: number): Promise<void>;
  close(): Promise<void>;
}

/** Listens on a port of its own. */
export async function discordLoopback(terms: RestTerms = { check: true, keep: 2000 }): Promise<Loopback> {
  const rest = fakeRest(terms);
  const server = createServer((request, response) => {
    void bodyOf(request).then(async (body) => {
      const { status, json, headers } = await rest.handle({
        method: request.method ?? '',
        url: request.url ?? '',
        type: request.headers['content-type'] ?? '',
        body,
        gateway: () => `ws://127.0.0.1:${portOf()}`,
      });
      response.writeHead(status, { ...(json === undefined ? {} : { 'content-type': 'application/json' }), ...headers });
      response.end(json === undefined ? undefined : JSON.stringify(json));
    });
  });
  const portOf = (): number => (server.address() as AddressInfo).port;
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const gateway = fakeGateway(server, () => `ws://127.0.0.1:${portOf()}`);
  return {
    api: `http://127.0.0.1:${portOf()}/api`,
    captured: rest.captured,
    flaws: rest.flaws,
    dispatch(interaction, times = 1) {
      rest.know(interaction);
      for (let sent = 0; sent < times; sent++) gateway.dispatch(interaction);
    },
    message: (event, data) => gateway.dispatch(data, `MESSAGE_${event}`),
    know: rest.know,
    next: rest.next,
    onRequest: rest.onRequest,
    refuse: rest.refuse,
    drop: gateway.drop,
    connections: gateway.connections,
    connected: gateway.connected,
    async close() {
      gateway.close();
      server.closeAllConnections();
      await new Promise((resolve) => server.close(resolve));
    },
  };
}

async function bodyOf(request: IncomingMessage): Promise<Buffer> {
  const parts: Buffer[] = [];
  for await (const part of request) parts.push(part as Buffer);
  return Buffer.concat(parts);
}
