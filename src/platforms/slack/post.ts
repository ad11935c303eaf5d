/** Posts messages of one answer by the ways that Slack leaves open: its response_url, to the asker alone, in their direct messages. */

import { type types, webApi } from '@slack/bolt';
import { RESPONSE } from './limits.ts';
import type { SlackMessage } from './render.ts';
import type { ResponseUrl, Where } from './types.ts';
import type { UploadedPictures } from './upload.ts';

/** What became of a message: posted, and how it can be replaced; `refused` where Slack does not take its blocks. */
export type Posted = { readonly by: 'response' | 'ephemeral' } | Lasting | Refused;

/** A message of the app's own, which stays where it is. */
interface Lasting {
  readonly by: 'message';
  readonly channel: string;
  readonly ts: string;
}

interface Refused {
  readonly by: 'refused';
}

/** Whether a message of ours can be replaced by a better one. */
export function replaceable(posted: Posted | undefined, where: Where): boolean {
  return posted?.by === 'message' || (posted?.by === 'response' && where.response?.replaces === true);
}

/** Whether a channel is somebody's direct messages. */
export function isDirect(channel: string | undefined): channel is string {
  return channel?.startsWith('D') === true;
}

/** One answer's way out. Nothing else counts the uses of its response_url. */
export interface Post {
  /** To the asker alone. Rejects when no way is left. */
  toAsker(message: SlackMessage, before?: Posted): Promise<Posted>;
  /** To everybody in the channel; undefined when the app may not post there. With `lasting` only as a message of the app's own. */
  toChannel(message: SlackMessage, lasting?: 'lasting'): Promise<Posted | undefined>;
  /** To the asker's direct messages with the app, where it stays. Rejects when it cannot be. */
  toDirect(message: SlackMessage): Promise<Lasting | Refused>;
  /** A place for files that the asker alone sees, after some words on them. Rejects when there is none. */
  directPlace(intro: SlackMessage): Promise<UploadedPictures>;
  /** The response_url as it is used by now. */
  response(): ResponseUrl | undefined;
}

/** What Slack says when an app may not post in a channel, or what it would replace is deleted. */
const CLOSED = [
  'not_in_channel',
  'channel_not_found',
  'is_archived',
  'user_not_in_channel',
  'restricted_action',
  'message_not_found',
  'cant_update_message',
];

export function postTo(client: webApi.WebClient, where: Where, now: () => number): Post {
  let used = where.response?.used ?? 0;
  let spent = false;

  /** Posts to the response_url; undefined when it takes no more. */
  const respond = async (
    message: SlackMessage,
    how: Readonly<Record<string, unknown>>,
  ): Promise<Posted | undefined> => {
    const { response } = where;
    if (!response || spent || used >= RESPONSE.uses || now() - response.since >= RESPONSE.milliseconds)
      return undefined;
    used += 1;
    const thread = where.thread === undefined ? {} : { thread_ts: where.thread };
    const body = JSON.stringify({ ...message, ...how, ...thread });
    const headers = { 'content-type': 'application/json' };
    // A connection lost on the way leaves the other ways.
    const answered = await fetch(response.url, { method: 'POST', headers, body }).catch(() => undefined);
    if (!answered) return undefined;
    const given = await answered.text();
    if (given.includes('invalid_blocks')) return { by: 'refused' };
    // An address that does not take one answer takes no other.
    spent = !answered.ok;
    return answered.ok ? { by: 'response' } : undefined;
  };

  const inChannel = async (channel: string, message: SlackMessage, thread?: string): Promise<Lasting> => {
    const { ts, channel: posted } = await client.chat.postMessage({
      channel,
      ...payload(message),
      unfurl_links: false,
      unfurl_media: false,
      ...(thread === undefined ? {} : { thread_ts: thread }),
    });
    return { by: 'message', channel: posted ?? channel, ts: ts ?? '' };
  };

  return {
    async toAsker(message, before) {
      const { channel, user, thread } = where;
      if (before?.by === 'message') {
        const updated = await open(() =>
          refusable(async () => {
            await client.chat.update({ channel: before.channel, ts: before.ts, ...payload(message) });
            return before;
          }),
        );
        if (updated) return updated;
      }
      // In the app's own direct messages an answer stays; in those between two people the app has no place.
      if (isDirect(channel)) {
        const posted = await open(() => refusable(() => inChannel(channel, message, thread)));
        if (posted) return posted;
      }
      const replace = before?.by === 'response' && where.response?.replaces === true;
      const responded = await respond(message, { response_type: 'ephemeral', replace_original: replace });
      if (responded) return responded;
      if (channel !== undefined && !isDirect(channel)) {
        const in_thread = thread === undefined ? {} : { thread_ts: thread };
        const posted = await open(() =>
          refusable(async () => {
            await client.chat.postEphemeral({ channel, user, ...payload(message), ...in_thread });
            return { by: 'ephemeral' };
          }),
        );
        if (posted) return posted;
      }
      return refusable(() => inChannel(user, message));
    },
    async toChannel(message, lasting) {
      const { channel, thread } = where;
      const responded =
        lasting === undefined
          ? await respond(message, { response_type: 'in_channel', replace_original: false })
          : undefined;
      if (responded || channel === undefined) return responded;
      return open(() => refusable(() => inChannel(channel, message, thread)));
    },
    toDirect: (message) => refusable(() => inChannel(where.user, message)),
    async directPlace(intro) {
      const { channel, thread, user } = where;
      const here = isDirect(channel) ? await open(() => inChannel(channel, intro, thread)) : undefined;
      if (here) return { channel: here.channel, ...(thread === undefined ? {} : { thread }) };
      return { channel: (await inChannel(user, intro)).channel };
    },
    response: () => where.response && { ...where.response, used },
  };
}

function payload({ text, blocks }: SlackMessage): { text: string; blocks: types.KnownBlock[] } {
  return { text, blocks: [...blocks] };
}

/** Undefined where the app may not post. */
async function open<T>(post: () => Promise<T>): Promise<T | undefined> {
  try {
    return await post();
  } catch (cause) {
    if (CLOSED.includes(slackError(cause) ?? '')) return undefined;
    throw cause;
  }
}

async function refusable<T extends Posted>(post: () => Promise<T>): Promise<T | Refused> {
  try {
    return await post();
  } catch (cause) {
    if (slackError(cause) === 'invalid_blocks') return { by: 'refused' };
    throw cause;
  }
}

/** What Slack's API said is wrong; undefined for any other error. */
function slackError(cause: unknown): string | undefined {
  return cause instanceof webApi.WebAPIPlatformError ? cause.data.error : undefined;
}
