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

/** What Slack answers instead of its usual: an error's name, a status by which it is not answered at all, for how many seconds it takes no more of this method, nothing as long as it is held, or the usual after a while; undefined for the usual at once. */
export type Refusing = (
  call: Call,
) =>
  | string
  | number
  | { readonly retryAfter: number }
  | { readonly held: Promise<unknown> }
  | { readonly late: Promise<unknown> }
  | undefined;
/** The status of an answer at a response address, and its text; where it is held, after that. */
export type Responding = (
  responded: Responded,
) => { readonly status: number; readonly text: string; readonly held?: Promise<unknown> } | undefined;

export interface Loopback {
  readonly api: string;
  readonly calls: readonly Call[];
  readonly responded: readonly Responded[];
  readonly uploads: ReadonlyMap<string, Buffer>;
  /** Envelopes that the app acknowledged over Socket Mode, with what it told. */
  readonly acknowledged: readonly { readonly envelope_id: string; readonly payload?: unknown }[];
  refuse(refusing: Refusing): void;
  respond(responding: Responding): void;
  /** A response address of its own: of a slash command, where every answer is a new message whatever it asks for, or of the message whose button was pressed. */
  responseUrl(pressed?: string): string;
  /** Under which a message stands that people see, for a response address of it. */
  keyOf(message: unknown): string | undefined;
  /** What people see by now: every message that was taken and neither replaced nor deleted since, the oldest first. */
  standing(): readonly Readonly<Record<string, unknown>>[];
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
  const stands = new Map<string, Readonly<Record<string, unknown>>>();
  const acknowledged: { envelope_id: string; payload?: unknown }[] = [];
  /** The message behind each response address of a press. */
  const pressedMessage = new Map<string, string>();
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
      const [channel, ts] = [channelOf(`${args.channel}`), `${1000 + ++times}.0001`];
      stands.set(`${channel}:${ts}`, { ...args, channel });
      return { channel, ts };
    }
    if (method === 'chat.postEphemeral') stands.set(`ephemeral:${++times}`, args);
    if (method === 'chat.update') stands.set(`${args.channel}:${args.ts}`, args);
    if (method === 'views.open') return { view: { id: 'VOPEN' } };
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
    const answer = (status: number, body: string, type = 'application/json', after = 1): void => {
      response.writeHead(status, { 'content-type': type, ...(status === 429 ? { 'retry-after': `${after}` } : {}) });
      response.end(body);
    };
    if (pathname.startsWith('/api/')) {
      const call = {
        method: pathname.slice('/api/'.length),
        token: `${request.headers.authorization ?? ''}`.replace('Bearer ', ''),
        args: argsOf(bytes.toString(), request.headers['content-type'] ?? ''),
      };
      const given = refusing(call);
      const held = typeof given === 'object' && 'held' in given;
      if (held) {
        calls.push(call);
        heard();
        await given.held;
        return response.destroy();
      }
      const late = typeof given === 'object' && 'late' in given;
      if (late) await given.late;
      const error = late ? undefined : given;
      const limited = typeof error === 'object' ? error.retryAfter : undefined;
      const status = limited !== undefined ? 429 : typeof error === 'number' ? error : 200;
      const body = error === undefined ? { ok: true, ...usual(call) } : { ok: false, error };
      if (telling) telling.heard(call, status);
      else calls.push(call);
      answer(status, JSON.stringify(body), 'application/json', limited);
    } else if (pathname.startsWith('/upload/')) {
      const given = refusing({ method: 'upload', token: '', args: {} });
      if (typeof given === 'object' && 'held' in given) await given.held;
      else if (!telling) uploads.set(pathname.slice('/upload/'.length), bytes);
      answer(200, 'OK', 'text/plain');
    } else {
      const one = { path: pathname, body: JSON.parse(bytes.toString()) as Record<string, unknown> };
      const { status, text, held } = responding(one) ?? { status: 200, text: 'ok', held: undefined };
      if (held) {
        await held;
        return response.destroy();
      }
      if (telling) telling.heard(one, status);
      else responded.push(one);
      if (status === 200 && !telling && !text.includes('"ok":false')) {
        const source = one.body.replace_original === true ? pressedMessage.get(pathname) : undefined;
        stands.set(source ?? `response:${++times}`, one.body);
      }
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
    responseUrl: (pressed) => {
      const path = `/respond/${++urls}`;
      if (pressed !== undefined) pressedMessage.set(path, pressed);
      return `http://127.0.0.1:${port}${path}`;
    },
    keyOf: (message) =>
      [...stands].find(
        ([, one]) => one === message || one.blocks === (message as Call['args'] | undefined)?.blocks,
      )?.[0],
    standing: () => [...stands.values()],
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

/** A person's id stands for their direct messages. */
function channelOf(channel: string): string {
  return channel.startsWith('U') ? `D${channel}` : channel;
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
