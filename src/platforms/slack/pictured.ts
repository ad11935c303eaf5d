/** Sends an answer with its pictures so that whoever sees it sees them: Slack gives a file to those who see a message that stays, and to nobody by one for the asker alone. */

import { SLACK } from '../../text/chat-text.ts';
import { type Pictures, sharePictures } from './pictures.ts';
import type { Party, SlackPorts } from './ports.ts';
import { isDirect, type Post, type Posted, replaceable } from './post.ts';
import { type Message, note } from './render.ts';
import { said } from './rich.ts';

/** Waits before a picture just uploaded is tried again: Slack takes about a second to have it ready. */
const PICTURE_WAITS = [1000, 2500];

/** An answer to send, with uploaded pictures. */
export interface Pictured {
  readonly pictures: Pictures;
  /** The pictures by themselves. */
  readonly alone: Message;
  /** Its messages, pictures in them or told by what they show; `direct`: told to be in the direct messages too. */
  messages(drawn: boolean, direct: boolean): readonly Message[];
}

/** What an answer is sent with. */
export interface Way {
  readonly post: Post;
  readonly party: Party;
  readonly ports: SlackPorts;
}

/** One message on its way; undefined where there is none. */
export type Send = (message: Message, before?: Posted) => Promise<Posted | undefined>;

/** Sends messages one after the other, the first in place of an earlier one; gives what became of the first, undefined where the way is closed. */
export async function sendEach(
  messages: readonly Message[],
  send: Send,
  before: Posted | undefined,
  { fault }: SlackPorts,
): Promise<Posted | undefined> {
  let first: Posted | undefined;
  for (const [i, message] of messages.entries()) {
    const replaced = i === 0 ? before : undefined;
    let posted = await send(message, replaced);
    if (posted?.by === 'refused') {
      fault('slack', new Error(`blocks that Slack refuses: ${JSON.stringify(message.blocks).slice(0, 2000)}`));
      posted = await send({ text: message.text, blocks: said(message.text) }, replaced);
    }
    if (!posted) return undefined;
    first ??= posted;
  }
  return first;
}

/** To the asker alone. Rejects when no way is left. */
export async function toAskerPictured(
  out: Pictured,
  before: Posted | undefined,
  way: Way,
): Promise<Posted | undefined> {
  const { post, party, ports } = way;
  const send: Send = (message, replaced) => post.toAsker(message, replaced);
  if (party.where.channel === undefined || isDirect(party.where.channel)) return sendLasting(out, send, before, way);
  const placed = await inDirect(out, way);
  if (placed === undefined) return sendEach(out.messages(false, false), send, before, ports);
  if (placed) {
    const posted = await sendDrawn(out, true, send, before, ports);
    return posted === 'refused' ? sendEach(out.messages(false, true), send, before, ports) : posted;
  }
  const plain = out.messages(false, true);
  const stands = await sendEach(plain, send, before, ports);
  if (!(await soon(async () => (await post.toDirect(out.alone)).by === 'message', ports))) {
    await shareIn(await post.directPlace(note(SLACK.pictureIntro)), out, way);
  } else if (plain.length === 1 && replaceable(stands, party.where)) await sendDrawn(out, true, send, stands, ports);
  return stands;
}

/** To everybody in the channel; undefined where the app may not post there. */
export async function toChannelPictured(out: Pictured, way: Way): Promise<Posted | undefined> {
  const { post, ports } = way;
  const lasting = await sendLasting(out, (message) => post.toChannel(message, 'lasting'), undefined, way);
  if (lasting) return lasting;
  const posted = await sendEach(out.messages(false, false), (message) => post.toChannel(message), undefined, ports);
  if (posted) await post.toAsker(note(SLACK.noPictureThere));
  return posted;
}

/** Where messages stay: the pictures stand in the answer, or come behind it as soon as Slack has them ready. */
async function sendLasting(
  out: Pictured,
  send: Send,
  before: Posted | undefined,
  way: Way,
): Promise<Posted | undefined> {
  const { post, party, ports } = way;
  // What is replaced was posted without files, and nothing says that a change gives them to its readers.
  const posted = before ? 'refused' : await sendDrawn(out, false, send, undefined, ports);
  if (posted === undefined) return undefined;
  if (posted !== 'refused') {
    // The direct messages of two people: it went by the response address, for the asker alone.
    if (posted.by !== 'message' && (await inDirect(out, way))) await post.toAsker(note(SLACK.picturesSent));
    return posted;
  }
  const stands = await sendEach(out.messages(false, false), send, before, ports);
  if (!stands || (await soon(async () => isThere(await send(out.alone)), ports))) return stands;
  const { channel, thread } = party.where;
  const place =
    channel === undefined || isDirect(channel)
      ? await post.directPlace(note(SLACK.pictureIntro))
      : { channel, ...(thread === undefined ? {} : { thread }) };
  await shareIn(place, out, way);
  return stands;
}

/** The answer with its pictures; `refused` where Slack does not have them ready. */
async function sendDrawn(
  out: Pictured,
  direct: boolean,
  send: Send,
  before: Posted | undefined,
  ports: SlackPorts,
): Promise<Posted | 'refused' | undefined> {
  const [first, ...rest] = out.messages(true, direct);
  const posted = first && (await send(first, before));
  if (!posted) return undefined;
  if (posted.by === 'refused') return 'refused';
  await sendEach(rest, send, undefined, ports);
  return posted;
}

/** Whether the pictures could be put into the asker's direct messages at once; undefined where there is no way to them. */
async function inDirect({ alone }: Pictured, { post, ports }: Way): Promise<boolean | undefined> {
  try {
    return (await post.toDirect(alone)).by === 'message';
  } catch (cause) {
    ports.fault('slack', cause);
    return undefined;
  }
}

/** Tries until it is done, a few times. */
async function soon(done: () => Promise<boolean>, { wait }: SlackPorts): Promise<boolean> {
  for (const pause of PICTURE_WAITS) {
    await wait(pause);
    if (await done()) return true;
  }
  return false;
}

function isThere(posted: Posted | undefined): boolean {
  return posted !== undefined && posted.by !== 'refused';
}

function shareIn(place: Parameters<typeof sharePictures>[2], out: Pictured, { party }: Way): Promise<void> {
  return sharePictures(out.pictures.drawn, party.client, place);
}
