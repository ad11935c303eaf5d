/** The long parts of a kept answer, sent when asked for: in messages while they are few, else as a text file and spreadsheets. */

import { fileStem, oneLine, sheetCsv, sheetText } from '../../chat/files.ts';
import { isPart } from '../../chat/offers.ts';
import type { Block, Reply } from '../../reply/reply.ts';
import { SLACK } from '../../text/chat-text.ts';
import { MOST_MESSAGES } from './limits.ts';
import { drawingsOf } from './pictures.ts';
import type { Party, SlackPorts } from './ports.ts';
import { postTo } from './post.ts';
import { type Message, note, renderPart } from './render.ts';
import { pictureFile, type Upload, upload } from './upload.ts';

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

/** Messages of our own making, one after the other, to the asker. */
export async function sendMessages(messages: readonly Message[], party: Party, ports: SlackPorts): Promise<void> {
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
export function filesOf(reply: Reply, blocks: readonly Block[]): readonly Upload[] {
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
