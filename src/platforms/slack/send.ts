/** Sends the answers of one ask: what stands at once, the last in its place, pictures in it, files where it is long. */

import { accountKey } from '../../accounts/asker.ts';
import { sectionsOf } from '../../chat/brief.ts';
import { fileStem, oneLine, sheetCsv, sheetText } from '../../chat/files.ts';
import { isPart } from '../../chat/offers.ts';
import type { Answer } from '../../chat/pipeline.ts';
import type { Request } from '../../chat/ports.ts';
import type { Block, Reply } from '../../reply/reply.ts';
import { Outage } from '../../storage/types.ts';
import { CHAT, SLACK } from '../../text/chat-text.ts';
import { FILES } from '../../text/sheets-text.ts';
import { Unworked } from '../../workers/queue.ts';
import { type AnswerSession, deliverAnswers, storeForButtons } from '../session.ts';
import { MOST_MESSAGES } from './limits.ts';
import { isDirect, type Post, type Posted, postTo, replaceable } from './post.ts';
import {
  drawingsOf,
  note,
  type Pictures,
  picturesOf,
  render,
  renderPart,
  renderPictures,
  renderSection,
  type Showing,
  type SlackMessage,
  sharePictures,
} from './render.ts';
import { said } from './rich.ts';
import type { Party, SlackPorts } from './types.ts';
import { pictureFile, type Upload, upload } from './upload.ts';

// The files that an answer comes with, made and put where the asker alone sees them.

/** Sends them to the asker's direct messages with the app; one that fails is told, and the others come. */
async function sendMade(
  { files = [], data }: Reply,
  post: Post,
  { client, where }: Party,
  { makeFile, fault }: SlackPorts,
): Promise<void> {
  if (files.length === 0) return;
  const place = await post.directPlace(note(SLACK.fileIntro));
  let sent = 0;
  for (const { name, title, as } of files) {
    try {
      const bytes = await makeFile?.(data, as);
      if (!bytes) throw new Error('nobody makes files');
      await upload(client, { name, title: oneLine(title), bytes }, place);
      sent += 1;
    } catch (cause) {
      if (!(cause instanceof Unworked)) fault('slack', cause);
      await post.toAsker(note(FILES.notMade(title)));
    }
  }
  if (sent > 0 && place.channel !== where.channel) await post.toAsker(note(SLACK.sent(sent)));
}

// Sends an answer with its pictures so that whoever sees it sees them: Slack gives a file to those who see a
// message that stays, and to nobody by one for the asker alone.

/** Waits before a picture just uploaded is tried again: Slack takes about a second to have it ready. */
const PICTURE_WAITS = [1000, 2500];

/** An answer to send, with uploaded pictures. */
interface Pictured {
  readonly pictures: Pictures;
  /** The pictures by themselves. */
  readonly alone: SlackMessage;
  /** Its messages, pictures in them or told by what they show; `direct`: told to be in the direct messages too. */
  messages(drawn: boolean, direct: boolean): readonly SlackMessage[];
}

/** What an answer is sent with. */
interface Way {
  readonly post: Post;
  readonly party: Party;
  readonly ports: SlackPorts;
}

/** One message on its way; undefined where there is none. */
type Send = (message: SlackMessage, before?: Posted) => Promise<Posted | undefined>;

/** Sends messages one after the other, the first in place of an earlier one; gives what became of the first, undefined where the way is closed. */
async function sendEach(
  messages: readonly SlackMessage[],
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
async function toAskerPictured(out: Pictured, before: Posted | undefined, way: Way): Promise<Posted | undefined> {
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
async function toChannelPictured(out: Pictured, way: Way): Promise<Posted | undefined> {
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

/** What was asked, and the answers as they come. */
interface AnsweredRequest extends Pick<Request, 'text' | 'written'> {
  readonly answers: AsyncIterable<Answer>;
}

/** Answers to the asker alone, or to the channel where the answer itself says so. Rejects when no way to them is left. */
export async function sendAnswers(
  { text, written, answers }: AnsweredRequest,
  party: Party,
  ports: SlackPorts,
): Promise<void> {
  const way = { post: postTo(party.client, party.where, ports.now), party, ports };
  let before: Posted | undefined;
  const put = async (answer: Answer, last: boolean, { id, save }: AnswerSession): Promise<void> => {
    const shown = isForChannel(answer);
    void save(answer);
    const changeable = 'headline' in answer && answer.form !== undefined && written !== 'message';
    const showing = { id, shown, changeable };
    if (last && 'blocks' in answer) {
      const pictures = picturesOf(answer, party.client, ports);
      // The figures wait for no picture that takes its time.
      if (!before && !shown && (await isLate(pictures, ports))) {
        before = await sendEach(render(answer, showing), way.post.toAsker, before, ports);
      }
      before = await sendReply(answer, pictures, showing, before, way);
    } else before = await sendEach(render(answer, showing), way.post.toAsker, before, ports);
  };
  await deliverAnswers(
    answers,
    { patience: { over: ports.patience() }, saves: ports.saves },
    {
      async send(session) {
        const { answer, last } = await session.first;
        // What everybody sees is sent once.
        if (last || !isForChannel(answer)) await put(answer, last, session);
        return last;
      },
      edit: (last, session) => put(last, true, session),
      save: (answer, id) => save(id, answer, text, party, ports),
    },
  );
}

function isForChannel(answer: Answer): boolean {
  return 'audience' in answer && answer.audience === 'channel';
}

/** Shows a kept answer to the channel; whether it could be posted there. */
export async function showInChannel(
  id: string,
  { text, reply }: { readonly text: string; readonly reply: Reply },
  party: Party,
  ports: SlackPorts,
): Promise<boolean> {
  const way = { post: postTo(party.client, party.where, ports.now), party, ports };
  const pictures = picturesOf(reply, party.client, ports);
  return (await sendReply(reply, pictures, { id, shown: true, requested: text }, undefined, way)) !== undefined;
}

/** Whether something takes longer than an answer is waited for. */
function isLate(coming: Promise<unknown>, { patience }: SlackPorts): Promise<boolean> {
  return Promise.race([coming.then(() => false), patience().then(() => true)]);
}

/** Sends a reply with its pictures; undefined where the channel is closed to us, which is then told. */
async function sendReply(
  reply: Reply,
  drawn: Promise<Pictures>,
  showing: Showing,
  before: Posted | undefined,
  way: Way,
): Promise<Posted | undefined> {
  const { post, party, ports } = way;
  const pictures = await drawn;
  const alone = renderPictures(reply, pictures.files);
  const send: Send = showing.shown ? (message) => post.toChannel(message) : post.toAsker;
  const out = alone && {
    pictures,
    alone,
    messages: (drawn: boolean, direct: boolean) =>
      render(reply, { ...showing, direct, ...(drawn ? { pictures: pictures.files } : {}) }),
  };
  const posted = !out
    ? await sendEach(render(reply, showing), send, before, ports)
    : showing.shown
      ? await toChannelPictured(out, way)
      : await toAskerPictured(out, before, way);
  if (!posted) await post.toAsker(note(SLACK.notShown));
  await sendMade(reply, post, party, ports);
  return posted;
}

/** Stores what the buttons of an answer need. Where the store does not take it, they tell so when they are pressed. */
async function save(id: string, answer: Answer, text: string, { asker }: Party, ports: SlackPorts): Promise<boolean> {
  const by = accountKey(asker);
  try {
    const form = 'problems' in answer ? answer.form : undefined;
    await storeForButtons(ports.kept, id, answer, { by, text, shown: isForChannel(answer), form });
    return true;
  } catch (cause) {
    // The store tells of its own outages, once and not for every ask.
    if (!(cause instanceof Outage)) ports.fault(id, cause);
    return false;
  }
}

/** A sentence of our own to the asker. */
export async function tell(text: string, party: Party, ports: SlackPorts): Promise<void> {
  await postTo(party.client, party.where, ports.now).toAsker(note(text));
}

/** That a kept answer is not to be had. */
export function tellGone(party: Party, ports: SlackPorts): Promise<void> {
  return tell(CHAT.gone('/floorhand'), party, ports);
}

// The long parts of a kept answer, sent when asked for: in messages while they are few, else as a text file
// and spreadsheets.

/** Spreadsheets attached at once. */
const MOST_TABLES = 10;

/** Sends one part; false when the answer has none there. */
export async function sendPart(reply: Reply, place: number, party: Party, ports: SlackPorts): Promise<boolean> {
  const block = reply.blocks[place];
  const messages = renderPart(reply, place);
  if (!block || !messages) return false;
  if (messages.length <= MOST_MESSAGES) await sendMessages(messages, party, ports);
  else await sendFiles(reply, [block], party, ports);
  return true;
}

/** Sends a section, or with `more` all of them; false when the answer has none of that name. */
export async function sendSection(reply: Reply, wanted: string, party: Party, ports: SlackPorts): Promise<boolean> {
  const messages = renderSection(reply, wanted);
  if (!messages) return false;
  if (wanted === 'plan') await sendPictures(reply, party, ports);
  else if (messages.length <= MOST_MESSAGES) await sendMessages(messages, party, ports);
  else await sendFiles(reply, wanted === 'more' ? reply.blocks : blocksOf(reply, wanted), party, ports);
  return true;
}

function blocksOf(reply: Reply, wanted: string): readonly Block[] {
  return sectionsOf(reply).flatMap(({ id, blocks }) => (id === wanted ? blocks : []));
}

/** Messages of our own making, one after the other, to the asker. */
async function sendMessages(messages: readonly SlackMessage[], party: Party, ports: SlackPorts): Promise<void> {
  const post = postTo(party.client, party.where, ports.now);
  for (const message of messages) await post.toAsker(message);
}

/** Sends the whole answer, or some blocks of it, as files to the asker's direct messages with the app. */
export async function sendFiles(
  reply: Reply,
  blocks: readonly Block[],
  party: Party,
  ports: SlackPorts,
): Promise<void> {
  const post = postTo(party.client, party.where, ports.now);
  const files = filesOf(reply, blocks);
  const place = await post.directPlace(note(SLACK.fileIntro));
  for (const file of files) await upload(party.client, file, place);
  if (place.channel !== party.where.channel) await post.toAsker(note(SLACK.sent(files.length)));
}

/** Sends every picture as a file to the asker's direct messages with the app. */
export async function sendPictures(reply: Reply, party: Party, ports: SlackPorts): Promise<void> {
  const post = postTo(party.client, party.where, ports.now);
  const place = await post.directPlace(note(SLACK.pictureIntro));
  for (const { drawing } of drawingsOf(reply)) {
    await upload(party.client, pictureFile(drawing, await ports.toPng(drawing)), place);
  }
  if (place.channel !== party.where.channel) await post.toAsker(note(SLACK.picturesSent));
}

/** A text file of everything, and a CSV for each table. */
function filesOf(reply: Reply, blocks: readonly Block[]): readonly Upload[] {
  const [first] = blocks;
  const one = blocks.length === 1 && first && isPart(first) ? first.title : undefined;
  const name = (title: string, end: string): string => `${fileStem(title) || 'floorhand'}.${end}`;
  const title = oneLine(one ?? reply.headline);
  const tables = blocks.flatMap((block) => (block.kind === 'table' ? [block] : [])).slice(0, MOST_TABLES);
  return [
    { name: name(one ?? reply.data.kind, 'txt'), title, bytes: Buffer.from(sheetText(reply, blocks)) },
    ...tables.map((table) => ({
      name: name(table.title, 'csv'),
      title: oneLine(table.title) || 'csv',
      bytes: Buffer.from(`\ufeff${sheetCsv(table)}`),
    })),
  ];
}
