/** Sends the answers of one ask: what stands at once, the last in its place, pictures in it, files where it is long. */

import type { Answer } from '../bot/answer.ts';
import { accountKey } from '../bot/invocation.ts';
import { keepAnswer, mintId } from '../bot/kept-answer.ts';
import { keepDraft } from '../bot/kept-draft.ts';
import { Outage } from '../bot/ports.ts';
import type { Reply } from '../reply/reply.ts';
import { CHAT } from '../words/chat.ts';
import { SLACK } from '../words/slack.ts';
import { keepMended } from './mended.ts';
import { type Pictures, picturesOf, sharePictures } from './pictures.ts';
import type { Party, SlackPorts } from './ports.ts';
import { type Post, type Posted, postTo, replaceable } from './post.ts';
import { type Message, note, render } from './render.ts';
import { said } from './rich.ts';
import { settled } from './settle.ts';

/** Waits before a picture just uploaded is tried again: Slack takes about a second to have it ready. */
const PICTURE_WAITS = [1000, 2500];

/** What was asked, and the answers as they come. */
export interface Asked {
  readonly text: string;
  readonly answers: AsyncIterable<Answer>;
}

/** Answers to the asker alone, or to the channel where the answer itself says so. Rejects when no way to them is left. */
export async function sendAnswers({ text, answers }: Asked, party: Party, ports: SlackPorts): Promise<void> {
  const post = postTo(party.client, party.where, ports.now);
  const id = mintId();
  let before: Posted | undefined;
  let keeping: Promise<void> = Promise.resolve();
  for await (const { value: answer, final } of settled(answers, ports.patience)) {
    const shown = 'audience' in answer && answer.audience === 'channel';
    if (!final && shown) continue;
    // Kept while it is sent, for the store takes its time to be sure; one after the other, so that the last one stays.
    keeping = keeping.then(() => keep(id, answer, { text, shown }, party, ports));
    const showing = { id, shown };
    const pictures = final && 'blocks' in answer ? await picturesOf(answer, party.client, ports) : undefined;
    const messages = render(answer, showing);
    const drawn = pictures !== undefined && pictures.files.size > 0;
    const withPictures = drawn ? render(answer, { ...showing, pictures: pictures.files }) : messages;
    before = await sendAll({ messages, withPictures, pictures, shown }, post, before, party, ports);
  }
  await keeping;
}

/** Shows a kept answer to the channel; whether it could be posted there. */
export async function showInChannel(
  id: string,
  { text, reply }: { readonly text: string; readonly reply: Reply },
  party: Party,
  ports: SlackPorts,
): Promise<boolean> {
  const post = postTo(party.client, party.where, ports.now);
  const pictures = await picturesOf(reply, party.client, ports);
  const showing = { id, shown: true, asked: text };
  const withPictures = render(reply, { ...showing, pictures: pictures.files });
  const messages = render(reply, showing);
  const posted = await sendAll({ messages, withPictures, pictures, shown: true }, post, undefined, party, ports);
  return posted !== undefined;
}

interface Outgoing {
  readonly messages: readonly Message[];
  /** The same with its pictures in it; the same where there are none. */
  readonly withPictures: readonly Message[];
  readonly pictures: Pictures | undefined;
  readonly shown: boolean;
}

/** Sends all messages of an answer, the first in place of the one before where that can be; undefined where the channel is closed to us. */
async function sendAll(
  out: Outgoing,
  post: Post,
  before: Posted | undefined,
  party: Party,
  ports: SlackPorts,
): Promise<Posted | undefined> {
  const send = (message: Message, replaced?: Posted): Promise<Posted | undefined> =>
    out.shown ? post.toChannel(message) : post.toAsker(message, replaced);
  let first: Posted | undefined;
  for (const [i, message] of out.withPictures.entries()) {
    const replaced = i === 0 ? before : undefined;
    let posted = await send(message, replaced);
    if (posted?.by === 'refused') {
      const later = await sendPlain(message, out.messages[i], replaced, send, party, ports);
      if (later.left && out.pictures) await sharePictures(out.pictures, post, party, out.shown);
      posted = later.posted;
    }
    if (!posted) {
      await post.toAsker(note(SLACK.notShown));
      return undefined;
    }
    if (i === 0) first = posted;
  }
  return first;
}

/** A message that Slack refused with its pictures: at once without them, and the pictures as soon as Slack has them ready; `left` where it never had. */
async function sendPlain(
  message: Message,
  plain: Message | undefined,
  before: Posted | undefined,
  send: (message: Message, replaced?: Posted) => Promise<Posted | undefined>,
  { where }: Party,
  ports: SlackPorts,
): Promise<{ readonly posted: Posted | undefined; readonly left: boolean }> {
  const images = message.blocks.filter(({ type }) => type === 'image');
  if (images.length === 0 || !plain) {
    ports.fault('slack', new Error(`blocks that Slack refuses: ${JSON.stringify(message.blocks).slice(0, 2000)}`));
    return { posted: await send({ text: message.text, blocks: said(message.text) }, before), left: false };
  }
  const stands = await send(plain, before);
  if (!stands) return { posted: undefined, left: false };
  for (const pause of PICTURE_WAITS) {
    await ports.wait(pause);
    const placed = replaceable(stands, where);
    const posted = placed ? await send(message, stands) : await send({ ...message, blocks: images });
    if (posted && posted.by !== 'refused') return { posted: placed ? posted : stands, left: false };
  }
  return { posted: stands, left: true };
}

/** Keeps what the buttons of an answer need. Where the store does not take it, they tell so when they are pressed. */
async function keep(
  id: string,
  answer: Answer,
  { text, shown }: { readonly text: string; readonly shown: boolean },
  { asker }: Party,
  ports: SlackPorts,
): Promise<void> {
  const by = accountKey(asker);
  try {
    if ('headline' in answer) await keepAnswer(ports.kept, id, { by, text, reply: answer, shown });
    else if ('problems' in answer) {
      if (answer.form) await keepDraft(ports.kept, id, { by, form: answer.form });
      await keepMended(ports.kept, id, { by, ask: answer.problems[0].fix });
    }
  } catch (cause) {
    // The store tells of its own outages, once and not for every ask.
    if (!(cause instanceof Outage)) ports.fault(id, cause);
  }
}

/** A sentence of our own to the asker. */
export async function tell(text: string, party: Party, ports: SlackPorts): Promise<void> {
  await postTo(party.client, party.where, ports.now).toAsker(note(text));
}

/** That a kept answer is not to be had. */
export function tellGone(party: Party, ports: SlackPorts): Promise<void> {
  return tell(CHAT.gone, party, ports);
}
