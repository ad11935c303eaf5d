/** The REST interface of the loopback: it captures, checks and answers as Discord does. */

import type { APIInteraction } from 'discord.js';
import { field, list } from './json-field.ts';
import { type PayloadKind, payloadFlaws } from './payload-flaws.ts';

/** One request that came. */
export interface Captured {
  readonly kind: PayloadKind | 'read' | 'delete' | 'direct' | 'typing' | 'take away' | 'pin' | 'member';
  readonly method: string;
  readonly path: string;
  readonly body: unknown;
  readonly files: ReadonlyMap<string, Buffer>;
  /** The interaction's token, where it is about one. */
  readonly token?: string;
}

/** Requests with something that people see. */
const PAYLOADS: readonly PayloadKind[] = ['callback', 'edit', 'follow-up', 'command', 'post', 'change', 'thread'];

/** How a request is refused. */
export interface Refusal {
  matching(one: Captured): boolean;
  readonly status: number;
  readonly json: unknown;
  readonly headers?: Readonly<Record<string, string>>;
  /** Refuses every request that matches, and not the next one only. */
  readonly lasting?: boolean;
}

interface Came {
  readonly method: string;
  readonly url: string;
  readonly type: string;
  readonly body: Buffer;
  gateway(): string;
}

interface Answered {
  readonly status: number;
  readonly json?: unknown;
  readonly headers?: Readonly<Record<string, string>>;
}

export interface FakeRest {
  readonly captured: readonly Captured[];
  readonly flaws: readonly string[];
  handle(came: Came): Promise<Answered>;
  know(interaction: APIInteraction): void;
  next(matching: (one: Captured) => boolean): Promise<Captured>;
  refuse(refusal: Refusal): void;
  onRequest(listener: RequestListener): void;
}

/** Told of a request as it comes, and of the status that it is answered with. */
export type RequestListener = (one: Captured, status: number) => void;

/** `check` looks at every payload for what Discord would refuse; `keep` requests are kept for the tests to look at. */
export interface RestTerms {
  readonly check: boolean;
  readonly keep: number;
}

export function fakeRest({ check: checked, keep }: RestTerms): FakeRest {
  const captured: Captured[] = [];
  const flaws: string[] = [];
  const known = new Map<string, { id: string; answered: boolean }>();
  const commands = new Map<string, unknown>();
  const refusals: Refusal[] = [];
  const taken = new Set<Captured>();
  const waiting: (() => void)[] = [];
  const listeners: RequestListener[] = [];
  let lastId = 800_000_000_000_000_000n;
  const newId = (): string => {
    lastId += 1n;
    return String(lastId);
  };

  const check = (one: Captured): void => {
    const kind = PAYLOADS.find((known) => known === one.kind);
    if (!checked || !kind) return;
    const found = payloadFlaws(kind, one.body, [...one.files.keys()]);
    flaws.push(...found.map((flaw) => `${one.kind}: ${flaw}`));
  };

  const messageOf = (data: unknown): unknown => ({
    id: newId(),
    channel_id: '500',
    attachments: list(field(data, 'attachments')).map((one) =>
      field(one, 'filename') === undefined ? one : { id: newId(), filename: field(one, 'filename') },
    ),
  });

  const answered = (one: Captured, query: URLSearchParams): Answered => {
    const parts = one.path.split('/');
    const interaction = one.token === undefined ? undefined : known.get(one.token);
    if (one.kind === 'callback') {
      if (!interaction) return refusalOf(404, 10062, 'Unknown interaction');
      if (interaction.answered) return refusalOf(400, 40060, 'Interaction has already been acknowledged.');
      known.set(one.token ?? '', { ...interaction, answered: true });
      const message = messageOf(field(one.body, 'data'));
      return query.get('with_response') === 'true'
        ? { status: 200, json: { interaction: { id: interaction.id }, resource: { type: 4, message } } }
        : { status: 204 };
    }
    if (one.kind === 'direct') return { status: 200, json: { id: '501', type: 1 } };
    if (['typing', 'take away', 'pin', 'member'].includes(one.kind)) return { status: 204 };
    if (one.kind === 'thread') return { status: 201, json: { id: newId(), type: 12 } };
    if (one.kind === 'post' || one.kind === 'change') {
      const made = messageOf(one.body);
      return { status: 200, json: one.kind === 'post' ? made : { ...Object(made), id: parts.at(-1) } };
    }
    if (one.kind === 'edit' || one.kind === 'follow-up') {
      if (!interaction?.answered) return refusalOf(404, 10015, 'Unknown Webhook');
      return { status: 200, json: messageOf(one.body) };
    }
    if (one.kind === 'command') {
      const id = newId();
      commands.set(String(field(one.body, 'name')), { ...Object(one.body), id });
      return { status: 201, json: commands.get(String(field(one.body, 'name'))) };
    }
    if (one.kind === 'delete') {
      for (const [name, command] of commands) if (field(command, 'id') === parts.at(-1)) commands.delete(name);
      return { status: 204 };
    }
    return { status: 200, json: [...commands.values()] };
  };

  return {
    captured,
    flaws,
    know: ({ id, token }) => {
      known.set(token, { id, answered: false });
      const [oldest] = known.keys();
      if (known.size > 20_000 && oldest !== undefined) known.delete(oldest);
    },
    refuse: (refusal) => void refusals.push(refusal),
    onRequest: (listener) => void listeners.push(listener),
    async next(matching) {
      for (;;) {
        const found = captured.find((one) => !taken.has(one) && matching(one));
        if (found) {
          taken.add(found);
          return found;
        }
        await new Promise<void>((resolve) => waiting.push(resolve));
      }
    },
    async handle(came) {
      const url = new URL(came.url, 'http://127.0.0.1');
      const path = decodeURIComponent(url.pathname).replace(/^\/api(?:\/v10)?/, '');
      if (path === '/gateway/bot') return { status: 200, json: gatewayOf(came.gateway()) };
      const one = await capturedOf(path, came);
      if (!one) return refusalOf(404, 0, `404: Not Found ${path}`);
      check(one);
      captured.push(one);
      if (captured.length > keep) taken.delete(captured.shift() ?? one);
      const at = refusals.findIndex(({ matching }) => matching(one));
      const refusal = refusals[at];
      if (refusal && !refusal.lasting) refusals.splice(at, 1);
      const response = refusal ?? answered(one, url.searchParams);
      for (const wake of waiting.splice(0)) wake();
      for (const listener of listeners) listener(one, response.status);
      return response;
    },
  };
}

function gatewayOf(url: string) {
  const session_start_limit = { total: 1000, remaining: 1000, reset_after: 1000, max_concurrency: 1 };
  return { url, shards: 1, session_start_limit };
}

/** An error as Discord's interface gives it. */
export function refusalOf(status: number, code: number, message: string): Answered & { readonly json: unknown } {
  return { status, json: { code, message } };
}

async function capturedOf(path: string, { method, type, body }: Came): Promise<Captured | undefined> {
  const kind = kindOf(method, path);
  if (!kind) return undefined;
  const token = /^\/(?:interactions|webhooks)\/\d+\/([^/]+)/.exec(path)?.[1];
  const read = await contentOf(type, body);
  return { kind, method, path, ...read, ...(token === undefined ? {} : { token }) };
}

function kindOf(method: string, path: string): Captured['kind'] | undefined {
  if (method === 'POST' && /^\/interactions\/\d+\/[^/]+\/callback$/.test(path)) return 'callback';
  if (method === 'PATCH' && /^\/webhooks\/\d+\/[^/]+\/messages\/@original$/.test(path)) return 'edit';
  if (method === 'POST' && /^\/webhooks\/\d+\/[^/]+$/.test(path)) return 'follow-up';
  if (method === 'POST' && path === '/users/@me/channels') return 'direct';
  if (method === 'POST' && /^\/channels\/\d+\/typing$/.test(path)) return 'typing';
  if (method === 'POST' && /^\/channels\/\d+\/threads$/.test(path)) return 'thread';
  if (method === 'PUT' && /^\/channels\/\d+\/(?:messages\/)?pins\/\d+$/.test(path)) return 'pin';
  if (method === 'PUT' && /^\/channels\/\d+\/thread-members\/\d+$/.test(path)) return 'member';
  if (method === 'POST' && /^\/channels\/\d+\/messages$/.test(path)) return 'post';
  if (method === 'PATCH' && /^\/channels\/\d+\/messages\/\d+$/.test(path)) return 'change';
  if (method === 'DELETE' && /^\/webhooks\/\d+\/[^/]+\/messages\/@original$/.test(path)) return 'take away';
  if (method === 'DELETE' && /^\/channels\/\d+\/messages\/\d+$/.test(path)) return 'take away';
  if (!/^\/applications\/\d+\/(?:guilds\/\d+\/)?commands/.test(path)) return undefined;
  if (method === 'POST') return 'command';
  return method === 'DELETE' ? 'delete' : 'read';
}

async function contentOf(type: string, body: Buffer): Promise<Pick<Captured, 'body' | 'files'>> {
  if (body.length === 0) return { body: undefined, files: new Map() };
  if (!type.startsWith('multipart/form-data')) return { body: JSON.parse(body.toString('utf8')), files: new Map() };
  const form = await new Response(new Uint8Array(body), { headers: { 'content-type': type } }).formData();
  const files = new Map<string, Buffer>();
  for (const [name, value] of form) {
    if (name.startsWith('files[') && typeof value !== 'string')
      files.set(value.name, Buffer.from(await value.arrayBuffer()));
  }
  return { body: JSON.parse(String(form.get('payload_json'))), files };
}
