/** Slack on loopback: its Web API, response addresses, uploads and Socket Mode, with everything that was sent to it. */

import { createServer, type IncomingMessage } from 'node:http';
import type { AddressInfo } from 'node:net';
import { type WebSocket, WebSocketServer } from 'ws';

/** One call of the Web API. */
export interface Call {
  readonly method: string;
  readonly token: string;
  readonly args: Readonly<Record<string, unknown>>;
}

/** One post to a response address. */
export interface Responded {
  readonly path: string;
  readonly body: Readonly<Record<string, unknown>>;
}

/** What Slack answers instead of its usual: an error's name, or a status by which it is not answered at all; nothing for the usual. */
export type Refusing = (call: Call) => string | number | undefined;
/** The status of an answer at a response address, and its text. */
export type Responding = (responded: Responded) => { readonly status: number; readonly text: string } | undefined;

export interface Loopback {
  readonly api: string;
  readonly calls: readonly Call[];
  readonly responded: readonly Responded[];
  readonly uploads: ReadonlyMap<string, Buffer>;
  /** Envelopes that the app acknowledged over Socket Mode, with what it told. */
  readonly acknowledged: readonly { readonly envelope_id: string; readonly payload?: unknown }[];
  refuse(refusing: Refusing): void;
  respond(responding: Responding): void;
  /** A response address of its own. */
  responseUrl(): string;
  /** Resolves when it holds, looked at whenever something comes in. */
  until(holds: () => boolean): Promise<void>;
  /** Sends an envelope over Socket Mode once an app is connected. */
  envelope(envelope: Readonly<Record<string, unknown>>): Promise<void>;
  /** Ends every Socket Mode connection there is. */
  drop(): void;
  close(): Promise<void>;
}

/** For a bench: what came in is told and not kept. */
export interface Telling {
  heard(given: Call | Responded, status: number): void;
}

export async function loopback(telling?: Telling): Promise<Loopback> {
  const calls: Call[] = [];
  const responded: Responded[] = [];
  const uploads = new Map<string, Buffer>();
  const acknowledged: { envelope_id: string; payload?: unknown }[] = [];
  let watchers: (() => void)[] = [];
  let refusing: Refusing = () => undefined;
  let responding: Responding = () => undefined;
  let [files, times, urls] = [0, 0, 0];
  const sockets: WebSocket[] = [];
  const heard = (): void => {
    const given = watchers;
    watchers = [];
    for (const look of given) look();
  };
  const usual = (call: Call): Record<string, unknown> => {
    const { method, args } = call;
    if (method === 'auth.test') return { user_id: 'UBOT', bot_id: 'BBOT', team_id: 'T1', url: 'https://w.example/' };
    if (method === 'apps.connections.open') return { url: api.replace('http:', 'ws:').replace('/api/', '/socket') };
    if (method === 'chat.postMessage') {
      const channel = `${args.channel}`;
      return { channel: channel.startsWith('U') ? `D${channel}` : channel, ts: `${1000 + ++times}.0001` };
    }
    if (method === 'files.getUploadURLExternal') {
      const id = `F${String(++files).padStart(9, '0')}`;
      return { file_id: id, upload_url: `${api.replace('/api/', '/upload/')}${id}` };
    }
    if (method === 'oauth.v2.access') {
      return {
        access_token: `xoxb-${args.code}`,
        token_type: 'bot',
        scope: 'commands,chat:write',
        bot_user_id: 'UBOT',
        app_id: 'A1',
        team: { id: `${args.code}`, name: 'A workspace' },
        authed_user: { id: 'U1' },
        is_enterprise_install: false,
      };
    }
    return {};
  };
  const server = createServer(async (request, response) => {
    const { pathname } = new URL(request.url ?? '/', 'http://loopback');
    const bytes = await bodyOf(request);
    const answer = (status: number, body: string, type = 'application/json'): void => {
      response.writeHead(status, { 'content-type': type, ...(status === 429 ? { 'retry-after': '1' } : {}) });
      response.end(body);
    };
    if (pathname.startsWith('/api/')) {
      const call = {
        method: pathname.slice('/api/'.length),
        token: `${request.headers.authorization ?? ''}`.replace('Bearer ', ''),
        args: argsOf(bytes.toString(), request.headers['content-type'] ?? ''),
      };
      const error = refusing(call);
      const status = typeof error === 'number' ? error : 200;
      const body = error === undefined ? { ok: true, ...usual(call) } : { ok: false, error };
      if (telling) telling.heard(call, status);
      else calls.push(call);
      answer(status, JSON.stringify(body));
    } else if (pathname.startsWith('/upload/')) {
      if (!telling) uploads.set(pathname.slice('/upload/'.length), bytes);
      answer(200, 'OK', 'text/plain');
    } else {
      const one = { path: pathname, body: JSON.parse(bytes.toString()) as Record<string, unknown> };
      const { status, text } = responding(one) ?? { status: 200, text: 'ok' };
      if (telling) telling.heard(one, status);
      else responded.push(one);
      answer(status, text, 'text/plain');
    }
    heard();
  });
  const socketServer = new WebSocketServer({ server, path: '/socket' });
  socketServer.on('connection', (socket) => {
    sockets.push(socket);
    socket.once('close', () => {
      const at = sockets.indexOf(socket);
      if (at >= 0) sockets.splice(at, 1);
    });
    socket.on('message', (data) => {
      acknowledged.push(JSON.parse(data.toString()));
      heard();
    });
    socket.send(JSON.stringify({ type: 'hello', num_connections: 1 }));
    heard();
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const { port } = server.address() as AddressInfo;
  const api = `http://127.0.0.1:${port}/api/`;
  const until = async (holds: () => boolean): Promise<void> => {
    while (!holds()) await new Promise<void>((resolve) => watchers.push(resolve));
  };
  return {
    api,
    calls,
    responded,
    uploads,
    acknowledged,
    refuse: (one) => {
      refusing = one;
    },
    respond: (one) => {
      responding = one;
    },
    responseUrl: () => `http://127.0.0.1:${port}/respond/${++urls}`,
    until,
    async envelope(envelope) {
      await until(() => sockets.length > 0);
      sockets.at(-1)?.send(JSON.stringify(envelope));
    },
    drop() {
      for (const socket of sockets.splice(0)) socket.terminate();
    },
    async close() {
      for (const socket of sockets) socket.terminate();
      socketServer.close();
      server.closeAllConnections();
      await new Promise((resolve) => server.close(resolve));
    },
  };
}

async function bodyOf(request: IncomingMessage): Promise<Buffer> {
  const parts: Buffer[] = [];
  for await (const part of request) parts.push(part);
  return Buffer.concat(parts);
}

/** The arguments of a call, those that are JSON within a form taken apart. */
function argsOf(body: string, type: string): Record<string, unknown> {
  if (type.startsWith('application/json')) return JSON.parse(body || '{}');
  return Object.fromEntries(
    [...new URLSearchParams(body)].map(([name, value]) => [name, /^[[{]/.test(value) ? JSON.parse(value) : value]),
  );
}
