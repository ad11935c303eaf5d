/** Our Slack app, running against Slack on loopback: the real Bolt app behind the real server, and what people do there. */

import { expect } from 'vitest';
import { commands } from '../../commands/all.ts';
import { type Answer, answer } from '../../src/chat/pipeline.ts';
import type { Ports, Request } from '../../src/chat/ports.ts';
import { DEFAULT_PREFERENCES } from '../../src/input/reading.ts';
import type { SlackSettings } from '../../src/platforms/platform.ts';
import { startSlack } from '../../src/platforms/slack/start.ts';
import type { SlackParts } from '../../src/platforms/slack/types.ts';
import { type Listening, listen, routed } from '../../src/server/http.ts';
import type { KeyValueStore } from '../../src/storage/types.ts';
import { replyTo } from '../chat/asked.ts';
import { demoPorts } from '../chat/demo-flat.ts';
import { keptInMemory } from '../chat/kept-in-memory.ts';
import { type Loopback, loopback } from './loopback.ts';
import { sentFlaws } from './payload.ts';
import { signature } from './signature.ts';

// The first sum loads what sums need, which may hold this process for seconds: before any request waits for it.
await replyTo('tape 1 + 2');

export const SECRET = 'a signing secret';
export const NOW = 1_800_000_000_000;
const PNG = Buffer.from('89504e470d0a1a0a', 'hex');

export interface Running {
  readonly slack: Loopback;
  readonly kept: KeyValueStore & { pass(milliseconds: number): void };
  readonly faults: readonly { readonly reference: string; readonly cause: unknown }[];
  /** Sends a request as Slack signs it, and gives our answer. */
  post(body: string, how?: Posting): Promise<Response>;
  get(path: string, headers?: Readonly<Record<string, string>>): Promise<Response>;
  slash(text: string, more?: Readonly<Record<string, string>>): Promise<Response>;
  /** What Slack calls interactivity: a payload within a form. */
  interact(payload: Readonly<Record<string, unknown>>, how?: Posting): Promise<Response>;
  event(
    event: Readonly<Record<string, unknown>>,
    how?: Posting & { readonly id?: string; readonly team?: string },
  ): Promise<Response>;
  /** A button of the last message that had one so called, pressed; `as` another user. */
  press(label: string, more?: Readonly<Record<string, unknown>>): Promise<Response>;
  /** Ends all, and holds everything that was sent against what Slack takes. */
  close(): Promise<void>;
}

export interface Posting {
  readonly secret?: string;
  /** Seconds since 1970. */
  readonly stamp?: number;
  readonly type?: string;
  readonly headers?: Readonly<Record<string, string>>;
}

/** Starts one; `over` what is not the usual. */
export async function running(
  over: {
    readonly settings?: Partial<SlackSettings>;
    readonly ports?: Partial<SlackParts>;
    /** Whether the asker keeps the demo flat. */
    readonly flat?: boolean;
  } = {},
): Promise<Running> {
  const slack = await loopback();
  const kept = keptInMemory();
  const faults: { reference: string; cause: unknown }[] = [];
  const fault = (reference: string, cause: unknown): void => {
    faults.push({ reference, cause });
  };
  const asker = { platform: 'slack', id: 'U1', workspace: 'T1' } as const;
  const flat = over.flat === true ? await demoPorts(asker, fault) : undefined;
  const ports: SlackParts = {
    answer: (request) => (flat ? answer(request, commands, flat) : answeredOnce(request, fault)),
    commands,
    preferences: DEFAULT_PREFERENCES,
    kept,
    shared: false,
    fault,
    holds: async () => over.flat === true,
    toPng: async () => PNG,
    patience: () => new Promise(() => undefined),
    wait: async (milliseconds) => (milliseconds > 5_000 ? new Promise(() => undefined) : undefined),
    now: () => NOW,
    ...over.ports,
  };
  const settings: SlackSettings = {
    botToken: 'xoxb-one',
    appToken: '',
    signingSecret: SECRET,
    clientId: '',
    clientSecret: '',
    stateSecret: '',
    key: '',
    api: slack.api,
    ...over.settings,
  };
  const app = await startSlack(settings, ports);
  const server: Listening = await listen(
    routed(app.pages, (cause) => fault('server', cause)),
    { host: '127.0.0.1', port: 0 },
  );
  const address = `http://127.0.0.1:${server.port}`;
  let count = 0;
  const unique = (prefix: string): string => `${prefix}${++count}`;
  const post: Running['post'] = (body, { secret = SECRET, stamp = NOW / 1000, type = FORM, headers = {} } = {}) =>
    whole(`${address}/slack/events`, {
      method: 'POST',
      body,
      headers: { 'content-type': type, ...signature(body, secret, stamp), ...headers },
    });
  const interact: Running['interact'] = (payload, how) =>
    post(
      new URLSearchParams({
        payload: JSON.stringify({ trigger_id: unique('TR'), team: { id: 'T1' }, user: { id: 'U1' }, ...payload }),
      }).toString(),
      how,
    );
  return {
    slack,
    kept,
    faults,
    post,
    get: (path, headers = {}) => whole(`${address}${path}`, { headers, redirect: 'manual' }),
    slash: (text, more = {}) =>
      post(
        new URLSearchParams({
          command: '/floorhand',
          text,
          user_id: 'U1',
          team_id: 'T1',
          channel_id: 'C1',
          trigger_id: unique('TR'),
          response_url: slack.responseUrl(),
          ...more,
        }).toString(),
      ),
    interact,
    event: (event, { id, team = 'T1', ...how } = {}) =>
      post(
        JSON.stringify({
          type: 'event_callback',
          team_id: team,
          event_id: id ?? unique('Ev'),
          event_time: NOW / 1000,
          authorizations: [
            { team_id: team, enterprise_id: null, user_id: 'UBOT', is_bot: true, is_enterprise_install: false },
          ],
          event,
        }),
        { type: 'application/json', ...how },
      ),
    press: (label, more = {}) => {
      const { action, message } = buttonOf(slack, label);
      return interact({
        type: 'block_actions',
        channel: { id: 'C1' },
        container: { type: 'message', message_ts: '1.1', channel_id: 'C1', is_ephemeral: true },
        response_url: slack.responseUrl(slack.keyOf(message)),
        actions: [action],
        message,
        ...more,
      });
    },
    async close() {
      await app.stop();
      await server.close();
      await slack.close();
      expect(sentFlaws(slack)).toEqual([]);
    },
  };
}

/** Where nothing is kept the same request has the same answers, whoever asks: each is worked out once in all tests. */
async function* answeredOnce(request: Request, fault: Ports['fault']): AsyncIterable<Answer> {
  const key = JSON.stringify({ ...request, asker: undefined, place: undefined, server: undefined });
  const known = answered.get(key);
  if (known) return yield* known;
  const answers: Answer[] = [];
  for await (const one of answer(request, commands, { fault })) {
    answers.push(one);
    yield one;
  }
  answered.set(key, answers);
}

const answered = new Map<string, readonly Answer[]>();

/** A response read to its end: one left unread would hold its connection, and the server's end. Each has a connection of its own, for the server gives up one that a busy machine leaves idle. */
async function whole(url: string, init: RequestInit): Promise<Response> {
  const got = await fetch(url, { ...init, headers: { ...init.headers, connection: 'close' } });
  return new Response(await got.text(), { status: got.status, headers: got.headers });
}

const FORM = 'application/x-www-form-urlencoded';

/** Everything that was shown so far, the latest last: at response addresses and by the Web API. */
export function shown(slack: Loopback): readonly Readonly<Record<string, unknown>>[] {
  const posted = slack.calls.filter(({ method }) => method.startsWith('chat.')).map(({ args }) => args);
  return [...slack.responded.map(({ body }) => body), ...posted];
}

/** All words of what was shown, markers and buttons aside. */
export function wordsOf(value: unknown): string {
  if (Array.isArray(value)) return value.map(wordsOf).join('');
  if (typeof value !== 'object' || value === null) return '';
  return Object.entries(value)
    .filter(([key]) => key !== 'elements' || !('type' in value && value.type === 'actions'))
    .map(([key, one]) =>
      typeof one !== 'string' ? wordsOf(one) : ['text', 'alt_text'].includes(key) ? `${one}\n` : '',
    )
    .join('');
}

interface Pressable {
  readonly type: string;
  readonly action_id: string;
  readonly value?: string;
  readonly text?: { readonly text: string };
  readonly options?: readonly { readonly value: string; readonly text: { readonly text: string } }[];
  readonly option_groups?: readonly { readonly options: NonNullable<Pressable['options']> }[];
}

/** The buttons and lists of what was shown, and of views. */
export function pressables(value: unknown): readonly Pressable[] {
  if (Array.isArray(value)) return value.flatMap(pressables);
  if (typeof value !== 'object' || value === null) return [];
  if ('action_id' in value && 'type' in value) return [value as Pressable];
  return Object.values(value).flatMap(pressables);
}

/** What a press of the button, or a choice from a list, of that label sends; undefined where a message has none. */
export function pressedAs(message: unknown, label: string): object | undefined {
  for (const found of pressables(message)) {
    if (found.text?.text === label) return { ...found, block_id: 'b' };
    const options = found.options ?? found.option_groups?.flatMap((group) => group.options) ?? [];
    const chosen = options.find(({ text }) => text.text === label);
    if (chosen && found.type === 'checkboxes') return { ...found, block_id: 'b', selected_options: [chosen] };
    if (chosen) return { ...found, block_id: 'b', selected_option: chosen };
  }
  return undefined;
}

function buttonOf(slack: Loopback, label: string): { action: unknown; message: unknown } {
  const views = slack.calls.filter(({ method }) => method.startsWith('views.')).map(({ args }) => args.view);
  for (const message of [...views, ...shown(slack)].reverse()) {
    const action = pressedAs(message, label);
    if (action) return { action, message };
  }
  throw new Error(`no button “${label}”`);
}
