/** What people write to the bot: direct messages, and messages in a channel that mention it. Anything else is left alone. */

import { type GatewayMessageCreateDispatchData, MessageType, type REST } from 'discord.js';
import { accountKey } from '../../accounts/records.ts';
import { isEmergency } from '../../chat/hazard-answers.ts';
import { onBehalfOf } from '../../workers/queue.ts';
import { inTime, refused, tellFault, tellUnlessOutage } from './fault.ts';
import { sayFaultTo } from './forms.ts';
import { type Came, sentAt } from './interaction.ts';
import { FILE_BYTES, KEEP_TIME, LOOK_UP_TIME } from './limits.ts';
import { sayHelp } from './receive.ts';
import { bringMissed, claimed, sendAnswers, Undelivered } from './send.ts';
import { channelsOf, type DiscordContext, type Outgoing, type Wire } from './types.ts';

/** A message as the gateway brings it. An edit may lack most of it. */
export type MessageEvent = Partial<GatewayMessageCreateDispatchData> &
  Pick<GatewayMessageCreateDispatchData, 'id' | 'channel_id'>;

export interface Hearing {
  /** The bot's own id. */
  readonly self: string;
  readonly rest: REST;
}

/** What was answered: kept so that an edit edits the answer and a deletion takes it away. */
interface Answered {
  readonly reply: string;
  /** The account that asked, and what. */
  readonly by: string;
  readonly person: string;
  readonly text: string;
}

/** A day: who edits a question later asks again. */
const ANSWERED_FOR = 24 * 3600 * 1000;

const keyOf = (id: string): string => `heard:${id}`;

/** A message that is meant for the bot, and what it says. */
function heard(message: MessageEvent, self: string): { readonly text: string; readonly author: string } | undefined {
  const { author, webhook_id, type, content = '', mentions = [], guild_id } = message;
  if (!author || author.bot || author.system || webhook_id !== undefined || author.id === self) return undefined;
  if (type !== undefined && type !== MessageType.Default && type !== MessageType.Reply) return undefined;
  // Everyone and roles are in other fields: only its own name is a mention of it.
  if (guild_id !== undefined && !mentions.some(({ id }) => id === self)) return undefined;
  return {
    text: content.replaceAll(`<@${self}>`, ' ').replaceAll(`<@!${self}>`, ' ').replace(/\s+/g, ' ').trim(),
    author: author.id,
  };
}

function cameIn({ id, channel_id, guild_id }: MessageEvent, author: string, self: string): Came {
  const asker = { platform: 'discord', id: author } as const;
  return {
    id,
    at: sentAt(id),
    token: '',
    application: self,
    asker,
    account: accountKey(asker),
    ...(guild_id === undefined ? {} : { server: guild_id, open: true }),
    channel: channel_id,
    ephemeral: false,
    fileBytes: FILE_BYTES,
  };
}

/** Answers a message, or edits the answer of one that was edited. Never rejects. */
export async function hearMessage(message: MessageEvent, access: DiscordContext, listening: Hearing): Promise<void> {
  const { self } = listening;
  const said = heard(message, self);
  if (!said) return;
  const edit = message.edited_timestamp ?? undefined;
  const came = cameIn(message, said.author, self);
  if (!access.isFresh(edit === undefined ? came.id : `${came.id} ${edit}`)) return;
  if (came.open && !isEmergency(said.text) && !access.channels.takes(message.channel_id, came.at)) return;
  await onBehalfOf(came.account, async () => {
    try {
      if (edit === undefined && !(await claimed(came, access))) return;
      await answered(message, said.text, came, access, listening);
    } catch (cause) {
      if (cause instanceof Undelivered) return;
      const reference = tellFault(access, cause);
      const wire = messageWire(access.wire, listening.rest, message, undefined);
      return await sayFaultTo(came, { ...access, wire }, reference, cause);
    }
  });
}

async function answered(
  message: MessageEvent,
  said: string,
  came: Came,
  access: DiscordContext,
  { rest }: Hearing,
): Promise<void> {
  const { kept } = access;
  const read = async (id: string | undefined): Promise<Answered | undefined> => {
    if (id === undefined) return undefined;
    const found = await inTime(kept.get(keyOf(id)), LOOK_UP_TIME, access).catch(() => undefined);
    return found as Answered | undefined;
  };
  const before = message.edited_timestamp ? await read(message.id) : undefined;
  if (before?.text === said) return;
  const wire = messageWire(access.wire, rest, message, before?.reply);
  const here = { ...access, wire };
  const keep = async (): Promise<void> => {
    const reply = wire.sent();
    if (reply === undefined) return;
    const one: Answered = { reply, by: came.account, person: came.asker.id, text: said };
    try {
      await inTime(
        Promise.all([kept.set(keyOf(message.id), one, ANSWERED_FOR), kept.set(keyOf(reply), one, ANSWERED_FOR)]),
        KEEP_TIME,
        access,
      );
    } catch (cause) {
      tellUnlessOutage(access, cause);
    }
  };
  try {
    if (said === '') return await sayHelp(came, here);
    // Somebody else adds to a question: it is theirs now, and both are named.
    const asked = await read(message.message_reference?.message_id);
    const others = asked !== undefined && asked.by !== came.account && came.open === true;
    const text = others ? `${asked.text} ${said}` : said;
    const added = others ? { added: asked.person } : {};
    const open = came.open ? { open: true as const } : {};
    await sendAnswers({ text, ...open, ...added }, came, { ephemeral: false, update: false }, here);
  } finally {
    await keep();
  }
  // What was missed is nobody else's business.
  if (!came.open) await bringMissed(here, came).catch((cause) => tellUnlessOutage(access, cause));
}

/** A question that was deleted takes its answer with it. Never rejects. */
export async function forget(
  { id, channel_id }: Pick<MessageEvent, 'id' | 'channel_id'>,
  access: DiscordContext,
  { rest }: Pick<Hearing, 'rest'>,
): Promise<void> {
  try {
    const found = (await access.kept.get(keyOf(id))) as Answered | undefined;
    if (!found || found.reply === id) return;
    await access.kept.delete(keyOf(id));
    await access.kept.delete(keyOf(found.reply));
    await channelsOf(rest).remove(channel_id, found.reply);
  } catch (cause) {
    // Deleted already, by somebody else.
    if (refused(cause) !== 'message') tellUnlessOutage(access, cause);
  }
}

/** The way out for a message: a reply to it, edited later; to the asker alone where the bot may not write there. */
function messageWire(
  wire: Wire,
  rest: REST,
  { id, channel_id }: MessageEvent,
  reply: string | undefined,
): Wire & { sent(): string | undefined } {
  const channels = channelsOf(rest);
  let sent = reply;
  const post = async (message: Outgoing, person: string) => {
    try {
      return await channels.post(channel_id, message, { message_id: id, fail_if_not_exists: false });
    } catch (cause) {
      if (!isForbidden(cause)) throw cause;
      await wire.direct(person, message);
      return undefined;
    }
  };
  const put = async (message: Outgoing, person: string) => {
    if (sent === undefined) {
      const made = await post(message, person);
      sent = made?.id;
      return made?.attachments ?? [];
    }
    const made = await channels.change(channel_id, sent, message);
    return made.attachments;
  };
  return {
    ...wire,
    sent: () => sent,
    async respond(to, message, { ephemeral }) {
      if (!ephemeral) return put(message, to.asker.id);
      await wire.direct(to.asker.id, message);
      return [];
    },
    async edit(to, message) {
      await put(message, to.asker.id);
    },
    async followUp(to, message, ephemeral) {
      if (ephemeral) await wire.direct(to.asker.id, message);
      else await post(message, to.asker.id);
    },
    async defer() {
      // Only a courtesy: the answer comes without it too.
      await channels.typing(channel_id).catch(() => undefined);
    },
  };
}

function isForbidden(cause: unknown): boolean {
  return cause instanceof Error && 'status' in cause && cause.status === 403;
}
