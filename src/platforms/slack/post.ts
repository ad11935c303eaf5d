/** Posts the messages of one answer: by the first way that Slack leaves open, plainer where it refuses the blocks, once more where it stumbles. */

import { type types, webApi } from '@slack/bolt';
import { SLACK } from '../../text/chat-text.ts';
import { IMAGE, RESPONSE, TIME } from './limits.ts';
import type { SlackMessage } from './render.ts';
import { cut, said } from './rich.ts';
import type { Party, ResponseUrl, SlackPorts, Where } from './types.ts';

/** Whether a channel is somebody's direct messages. */
export function isDirect(channel: string | undefined): channel is string {
  return channel?.startsWith('D') === true;
}

/** A message of the app's own, which stays where it is and can be changed. */
export interface Lasting {
  readonly channel: string;
  readonly ts: string;
}

/** No way is left to whoever asked: `errors` are what Slack said to each, `messages` what it was to bring and nobody stored yet. */
export class Unsent extends AggregateError {
  override readonly name = 'Unsent';
  readonly messages: readonly SlackMessage[];

  constructor(causes: readonly unknown[], messages: readonly SlackMessage[]) {
    super(causes, `no way is left to whoever asked: ${causes.map(String).join('; ')}`);
    this.messages = messages;
  }
}

/** Sends messages in turn. Rejects with Unsent of those that are left. */
export async function sendEach(
  messages: readonly SlackMessage[],
  send: (message: SlackMessage, place: number) => Promise<unknown>,
): Promise<void> {
  for (const [i, message] of messages.entries()) {
    try {
      await send(message, i);
    } catch (cause) {
      throw cause instanceof Unsent ? new Unsent(cause.errors, messages.slice(i)) : cause;
    }
  }
}

// What Slack says when it does not do what it was asked, and what can be done about it.

/** `content`: it takes no such message; `again`: it may take it in a moment; `closed`: not by this way. */
type Refusal = 'content' | 'again' | 'closed';

/** Of the errors that Slack documents, those about what was sent; nobody need list the others. */
const CONTENT = /blocks|attachments?$|too_long|too_large|no_text|metadata|markdown|^invalid_arguments$/;
const AGAIN = ['internal_error', 'fatal_error', 'service_unavailable', 'request_timeout', 'update_failed'];
/** Those by which every call of the same token ends. */
const TOKEN = ['account_inactive', 'invalid_auth', 'not_authed', 'token_expired', 'token_revoked'];

function refusalOf(error: string): Refusal {
  if (AGAIN.includes(error)) return 'again';
  return CONTENT.test(error) ? 'content' : 'closed';
}

/** What a response address says where it takes no message. */
class Unanswered extends Error {
  override readonly name = 'Unanswered';
  readonly code: string;
  readonly refusal: Refusal;

  constructor(code: string, refusal: Refusal) {
    super(`a response address said ${code}`);
    this.code = code;
    this.refusal = refusal;
  }
}

/** Slack takes no more of a method for so many seconds: which one and how long is in the log. */
class Limited extends Error {
  override readonly name = 'Limited';
  readonly call: string;
  readonly seconds: number;

  constructor(call: string, seconds: number) {
    super(`Slack limits ${call}: again in ${seconds} s`);
    this.call = call;
    this.seconds = seconds;
  }
}

/** What Slack named as the error of a call; undefined for what is none of its answers. */
export function errorOf(cause: unknown): string | undefined {
  return cause instanceof webApi.WebAPIPlatformError ? cause.data.error : undefined;
}

/** Whether it was Slack that did not do it, and no fault of ours. */
export function isRefused(cause: unknown): boolean {
  return cause instanceof webApi.SlackError;
}

/** Whether what was sent was refused, so that a plainer form of it may be taken. */
export function isTooMuch(cause: unknown): boolean {
  return refusalBy(cause) === 'content';
}

/** Whether the app may do nothing more in that workspace until it is installed again. */
export function isLost(cause: unknown): boolean {
  return TOKEN.includes(errorOf(cause) ?? '');
}

function refusalBy(cause: unknown): Refusal {
  if (cause instanceof Unanswered) return cause.refusal;
  if (cause instanceof webApi.WebAPIPlatformError) return refusalOf(cause.data.error);
  return cause instanceof webApi.WebAPIHTTPError ? 'again' : 'closed';
}

/** Calls Slack. A rate limit is waited for by this call alone, and not where it lasts longer than `most` milliseconds. Rejects as the call does. */
export async function called<T>(
  method: string,
  call: () => Promise<T>,
  { wait, fault }: SlackPorts,
  most: number = TIME.limited,
): Promise<T> {
  for (let tries = 1; ; tries++) {
    try {
      return await call();
    } catch (cause) {
      if (!(cause instanceof webApi.WebAPIRateLimitedError)) throw cause;
      fault('slack', new Limited(method, cause.retryAfter));
      if (tries === TIME.tries || cause.retryAfter * 1000 > most) throw cause;
      await wait(cause.retryAfter * 1000);
    }
  }
}

/** Calls Slack for a form or the Home tab: as `called`, and once more where it stumbles. */
export async function viewed<T>(
  method: string,
  call: () => Promise<T>,
  ports: SlackPorts,
  most: number = TIME.limited,
): Promise<T> {
  try {
    return await called(method, call, ports, most);
  } catch (cause) {
    if (refusalBy(cause) !== 'again') throw cause;
    return called(method, call, ports, most);
  }
}

// The ways out of one answer.

/** One answer's way out. Nothing else counts the uses of its response address. */
export interface Post {
  /** To whoever asked: in the thread that everybody reads, in their direct messages, or to them alone; in place of `before` where that still stands. Rejects with Unsent. */
  toAsker(message: SlackMessage, before?: Lasting): Promise<Lasting | undefined>;
  /** To the asker alone, wherever they asked. Rejects with Unsent. */
  alone(message: SlackMessage): Promise<void>;
  /** To everybody in the channel; false when the app may not post there. */
  toChannel(message: SlackMessage): Promise<boolean>;
  /** In place of the message whose button was pressed; false where it cannot be. */
  inPlace(message: SlackMessage): Promise<boolean>;
  /** Shows that the answer takes a while: by a status where there is a thread, else by a line, given where the answer may take its place. Never rejects. */
  working(): Promise<Lasting | undefined>;
  /** A place for files that the asker sees, `alone` or not, after some words on them where it is not where they asked. Rejects when there is none. */
  place(
    intro: string,
    alone?: 'alone',
  ): Promise<{ readonly channel: string; readonly thread?: string; readonly here: boolean }>;
  /** The response address as it is used by now. */
  response(): ResponseUrl | undefined;
  /** How many messages Slack has taken. */
  posted(): number;
}

type Way = (message: SlackMessage) => Promise<Lasting | undefined>;

export function postTo({ client, where }: Pick<Party, 'client' | 'where'>, ports: SlackPorts): Post {
  const { channel, thread, user, open = false, pressed } = where;
  const response = responseWay(where, ports);
  let taken = 0;

  const inChannel =
    (to: string, within?: string): Way =>
    async (message) => {
      const { ts, channel: there } = await called(
        'chat.postMessage',
        () =>
          client.chat.postMessage({
            channel: to,
            ...payload(message),
            unfurl_links: false,
            unfurl_media: false,
            ...(within === undefined ? {} : { thread_ts: within }),
          }),
        ports,
      );
      return { channel: there ?? to, ts: ts ?? '' };
    };
  const changed =
    ({ channel: at, ts }: Lasting): Way =>
    async (message) => {
      await called('chat.update', () => client.chat.update({ channel: at, ts, ...payload(message) }), ports);
      return { channel: at, ts };
    };
  const ephemeral =
    (to: string): Way =>
    async (message) => {
      const within = thread === undefined ? {} : { thread_ts: thread };
      const sent = { channel: to, user, ...payload(message), ...within };
      await called('chat.postEphemeral', () => client.chat.postEphemeral(sent), ports);
      return undefined;
    };
  const answered: Way = async (message) =>
    response.send(message, { response_type: 'ephemeral', replace_original: false });

  /** Sends by one way: plainer where the blocks are refused, once more where Slack stumbles. Rejects where it is closed. */
  const sentBy = async (way: Way, message: SlackMessage): Promise<Lasting | undefined> => {
    const attempt = async (one: SlackMessage): Promise<Lasting | undefined> => {
      const posted = await way(one);
      taken += 1;
      return posted;
    };
    try {
      return await attempt(message);
    } catch (cause) {
      const refusal = refusalBy(cause);
      if (refusal === 'closed') throw cause;
      if (refusal === 'again') return attempt(message);
      ports.fault(
        'slack',
        new Error(`a message that Slack refuses: ${JSON.stringify(message.blocks).slice(0, 2000)}`, { cause }),
      );
      return attempt({ text: message.text, blocks: said(message.text) });
    }
  };
  /** By the first way that takes it. */
  const sent = async (message: SlackMessage, ways: readonly Way[]): Promise<Lasting | undefined> => {
    const causes: unknown[] = [];
    for (const way of ways) {
      try {
        return await sentBy(way, message);
      } catch (cause) {
        causes.push(cause);
      }
    }
    throw new Unsent(causes, [message]);
  };

  /** For the asker alone. In the app's own direct messages an answer stays; in those of two people it has no place. */
  const toThem = (): readonly Way[] => {
    const own = isDirect(channel) ? [inChannel(channel, thread)] : [];
    const there = channel !== undefined && !isDirect(channel) ? [ephemeral(channel)] : [];
    return [...own, ...(response.works() ? [answered] : []), ...there, inChannel(user)];
  };
  const toAll = (at: string): readonly Way[] => [
    inChannel(at, thread),
    ...(response.works() ? [answered] : []),
    ...(thread === undefined ? [] : [inChannel(at)]),
    inChannel(user),
  ];
  const usual = (): readonly Way[] => (open && channel !== undefined ? toAll(channel) : toThem());
  const lasts = channel !== undefined && (open || isDirect(channel));

  return {
    toAsker: (message, before) => sent(message, before ? [changed(before), ...usual()] : usual()),
    alone: async (message) => void (await sent(message, toThem())),
    async toChannel(message) {
      const shared: Way = (one) => response.send(one, { response_type: 'in_channel', replace_original: false });
      const ways = [
        ...(response.works() ? [shared] : []),
        ...(channel === undefined ? [] : [inChannel(channel, thread)]),
      ];
      try {
        await sent(message, ways);
        return true;
      } catch (cause) {
        if (cause instanceof Unsent) return false;
        throw cause;
      }
    },
    async inPlace(message) {
      if (!pressed || open) return false;
      const replaced: Way = (one) => response.send(one, { replace_original: true });
      const { ts } = pressed;
      const ways = [
        ...(response.works() ? [replaced] : []),
        ...(isDirect(channel) && ts !== undefined ? [changed({ channel, ts })] : []),
      ];
      try {
        await sent(message, ways);
        return true;
      } catch {
        return false;
      }
    },
    async working() {
      const line = { text: SLACK.working, blocks: said(SLACK.working) };
      try {
        if (lasts && thread !== undefined) {
          const status = { channel_id: channel, thread_ts: thread, status: SLACK.status };
          const shown = await called(
            'assistant.threads.setStatus',
            () => client.assistant.threads.setStatus(status),
            ports,
          ).then(
            () => true,
            () => false,
          );
          if (shown) return undefined;
        }
        const posted = await sent(line, usual());
        taken -= 1;
        return posted;
      } catch {
        // The answer itself will find a way, or tell that there is none.
        return undefined;
      }
    },
    async place(intro, alone) {
      const message = { text: intro, blocks: said(intro) };
      if (lasts && !(open && alone)) return { channel, ...(thread === undefined ? {} : { thread }), here: true };
      const there = await sent(message, [inChannel(user)]);
      if (!there) throw new Error('no direct messages');
      return { channel: there.channel, here: false };
    },
    response: response.left,
    posted: () => taken,
  };
}

/** Slack's way to answer one interaction: a few times, for half an hour; every answer there is a message of its own. */
function responseWay({ response, thread }: Where, { now, fault }: Pick<SlackPorts, 'now' | 'fault'>) {
  let used = response?.used ?? 0;
  let spent = false;
  const works = (): boolean =>
    response !== undefined && !spent && used < RESPONSE.uses && now() - response.since < RESPONSE.milliseconds;
  return {
    works,
    left: (): ResponseUrl | undefined => response && { ...response, used },
    async send(message: SlackMessage, how: Readonly<Record<string, unknown>>): Promise<undefined> {
      if (!response || !works()) throw new Unanswered('used_up', 'closed');
      used += 1;
      const within = thread === undefined ? {} : { thread_ts: thread };
      const answered = await fetch(response.url, {
        method: 'POST',
        headers: { 'content-type': 'application/json' },
        body: JSON.stringify({ ...message, ...how, ...within }),
        signal: AbortSignal.timeout(TIME.call),
      }).catch((cause: unknown) => {
        spent = true;
        throw cause;
      });
      if (answered.status === 429) {
        fault('slack', new Limited('response_url', Number(answered.headers.get('retry-after') ?? 0)));
      }
      const text = await answered.text();
      const error = errorIn(text, answered.ok);
      if (error === undefined) return undefined;
      const refusal = refusalOf(error);
      // An address that does not take one answer takes no other, but for a plainer one.
      spent = refusal === 'closed';
      throw new Unanswered(/^\w{1,40}$/.test(error) ? error : `${answered.status}`, refusal);
    },
  };
}

/** What a response address says is wrong, which it may do with a status of success too. */
function errorIn(text: string, ok: boolean): string | undefined {
  try {
    const { ok: fine, error } = JSON.parse(text) as { readonly ok?: unknown; readonly error?: unknown };
    if (fine === false) return typeof error === 'string' ? error : 'ok: false';
  } catch {
    // Its usual answer is no JSON.
  }
  return ok ? undefined : text || 'nothing';
}

function payload({ text, blocks }: SlackMessage): { text: string; blocks: types.KnownBlock[] } {
  return { text, blocks: [...blocks] };
}

// Files put into Slack: an address asked for, the bytes sent there, the upload completed, and shared where it is to
// be seen.

export interface Upload {
  readonly name: string;
  readonly title: string;
  /** What a picture shows, for whoever cannot see it. */
  readonly alt?: string;
  readonly bytes: Buffer;
}

/** Uploads a file and shares it, by a client that nothing else waits for. Rejects when Slack does not take it, at once where it limits uploads for long. */
export async function upload(
  party: Pick<Party, 'client'>,
  { name, title, alt, bytes }: Upload,
  ports: SlackPorts,
  { channel, thread }: { readonly channel: string; readonly thread?: string },
): Promise<void> {
  const client = ports.uploads(party.client);
  const begun = { filename: name, length: bytes.length, ...(alt === undefined ? {} : { alt_text: alt }) };
  const { file_id, upload_url } = await called(
    'files.getUploadURLExternal',
    () => client.files.getUploadURLExternal(begun),
    ports,
    TIME.limitedFile,
  );
  if (file_id === undefined || upload_url === undefined) throw new Error('an upload without an address');
  const body = { method: 'POST', body: new Uint8Array(bytes), signal: AbortSignal.timeout(TIME.upload) };
  const sent = await fetch(upload_url, body);
  if (!sent.ok) throw new Error(`an upload was answered with ${sent.status}`);
  const files: [{ id: string; title: string }] = [{ id: file_id, title: cut(title, IMAGE.title) }];
  const complete = () =>
    thread === undefined
      ? client.files.completeUploadExternal({ files, channel_id: channel })
      : client.files.completeUploadExternal({ files, channel_id: channel, thread_ts: thread });
  await called('files.completeUploadExternal', complete, ports, TIME.limitedFile);
}

/** Seconds for which Slack takes no more of them, where that is why one was not taken. */
export function limitedFor(cause: unknown): number | undefined {
  return cause instanceof webApi.WebAPIRateLimitedError ? cause.retryAfter : undefined;
}
