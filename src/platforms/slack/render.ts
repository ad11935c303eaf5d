/** An answer as Slack messages: pure, total, its headline and cautions whole, nothing in it taken as markup. */

import type { webApi } from '@slack/bolt';
import { oneLine } from '../../chat/files.ts';
import { assumedOf, isPart, offersOf, type ReplyPart } from '../../chat/offers.ts';
import type { Answer } from '../../chat/pipeline.ts';
import type { Drawing } from '../../reply/drawing.ts';
import { ADDRESS, type Block, type Caution, type Problem, type Reply } from '../../reply/reply.ts';
import { CHAT, SLACK, sayFault } from '../../text/chat-text.ts';
import { saySource } from '../../text/help-text.ts';
import { Unworked } from '../../workers/queue.ts';
import { answerRows, problemRows } from './buttons.ts';
import { IMAGE, INLINE, MESSAGE, MOST_PICTURES } from './limits.ts';
import {
  cut,
  EMPTY,
  escapedRich,
  type SlackBlock,
  said,
  saidCode,
  saidLines,
  saidTable,
  slackPlainText,
  slackSize,
} from './rich.ts';
import type { SlackPorts } from './types.ts';
import { pictureFile, type UploadedPictures, upload } from './upload.ts';

// The parts of an answer as Slack blocks: every kind of block, problems, cautions.

/** A block of a reply; `file`: its uploaded picture, where it is one. */
export function blockBlocks(block: Block, file?: string): readonly SlackBlock[] {
  switch (block.kind) {
    case 'text':
      return said(block.text);
    case 'facts':
      return saidLines(
        block.title,
        block.facts.map(({ label, value, opens }) => ({
          label: `${label}:`,
          text: value,
          opens: opens === true && ADDRESS.test(value),
        })),
      );
    case 'table':
      return saidTable(block);
    case 'steps':
      return saidLines(
        block.title,
        block.steps.map((text, i) => ({ label: `${i + 1}.`, text })),
      );
    case 'checklist':
      return saidLines(
        block.title,
        block.items.map((text) => ({ label: '☐', text })),
      );
    case 'picture':
      return pictureBlocks(block.drawing, file);
  }
}

/** A picture by its uploaded file; without one by what it shows. */
function pictureBlocks({ title, alt }: Drawing, file: string | undefined): readonly SlackBlock[] {
  if (file === undefined) return saidLines(title, [{ text: alt }]);
  const alt_text = cut(oneLine(alt) || EMPTY, IMAGE.alt);
  return [{ type: 'image', slack_file: { id: file }, alt_text, title: slackPlainText(title, IMAGE.title) }];
}

/** Each problem with what was read, and what to type: behind each, or once below when one ask mends all. */
function problemBlocks(problems: readonly Problem[]): readonly SlackBlock[] {
  const shared = problems.length > 1 && new Set(problems.map(({ fix }) => fix)).size === 1;
  const typed = (fix: string | undefined): readonly SlackBlock[] =>
    fix === undefined
      ? []
      : [...saidLines(undefined, [{ label: `${CHAT.type}:`, text: '' }]), ...saidCode(`/floorhand ${oneLine(fix)}`)];
  return [
    ...said(CHAT.problem, true),
    ...problems.flatMap(({ option, got, expected, fix }) => [
      ...saidLines(undefined, [
        { label: `${option}:`, text: expected },
        { label: `${CHAT.read}:`, text: got === '' ? CHAT.nothing : got },
      ]),
      ...(shared ? [] : typed(fix)),
    ]),
    ...(shared ? typed(problems[0]?.fix) : []),
  ];
}

/** Every caution whole. */
function cautionBlocks(cautions: readonly Caution[]): readonly SlackBlock[] {
  return cautions.length === 0
    ? []
    : saidLines(
        CHAT.cautions,
        cautions.map(({ text }) => ({ label: '•', text })),
      );
}

// Blocks packed into messages that Slack takes: so many blocks, so many characters, one table each.

/** The blocks of each message, in order; none is empty. */
function pagesOf(blocks: readonly SlackBlock[]): readonly (readonly SlackBlock[])[] {
  const pages: SlackBlock[][] = [];
  let [size, tables] = [0, 0];
  for (const block of blocks) {
    const [length, table] = [slackSize(block), block.type === 'table' ? 1 : 0];
    const page = pages.at(-1);
    const full =
      !page || page.length >= MESSAGE.body || size + length > MESSAGE.characters || tables + table > MESSAGE.tables;
    if (full) {
      pages.push([block]);
      [size, tables] = [length, table];
      continue;
    }
    page.push(block);
    size += length;
    tables += table;
  }
  return pages;
}

// The pictures of an answer: drawn, uploaded for its messages, and shared as files where no message takes
// them.

export interface Pictures {
  readonly drawn: readonly { readonly drawing: Drawing; readonly png: Buffer }[];
  /** Ids of the uploaded files by the place of their block. */
  readonly files: ReadonlyMap<number, string>;
}

/** Draws and uploads the first pictures of a reply; one that fails is told to whoever runs the bot, and the answer stands without it. */
export async function picturesOf(reply: Reply, client: webApi.WebClient, ports: SlackPorts): Promise<Pictures> {
  const made = await Promise.all(
    drawingsOf(reply)
      .slice(0, MOST_PICTURES)
      .map(async ({ place, drawing }) => {
        try {
          const png = await ports.toPng(drawing);
          return { place, drawing, png, file: await upload(client, pictureFile(drawing, png)) };
        } catch (cause) {
          // Too many pictures at once are no fault: the figures stand, and pressing once more draws them.
          if (!(cause instanceof Unworked)) ports.fault('slack', cause);
          return undefined;
        }
      }),
  );
  const drawn = made.filter((one) => one !== undefined);
  return { drawn, files: new Map(drawn.map(({ place, file }) => [place, file])) };
}

/** The drawings of a reply by the place of their block. */
export function drawingsOf({ blocks }: Reply): readonly { readonly place: number; readonly drawing: Drawing }[] {
  return blocks.flatMap((block, place) => (block.kind === 'picture' ? [{ place, drawing: block.drawing }] : []));
}

/** Shares drawn pictures as files of their own. Rejects when Slack takes one of them nowhere. */
export async function sharePictures(
  drawn: Pictures['drawn'],
  client: webApi.WebClient,
  place: UploadedPictures,
): Promise<void> {
  for (const { drawing, png } of drawn) await upload(client, pictureFile(drawing, png), place);
}

/** What is sent: `text` is the notification, and what a client without blocks shows. */
export interface SlackMessage {
  readonly text: string;
  readonly blocks: readonly SlackBlock[];
}

/** How an answer is shown. */
export interface Showing {
  /** The id it is kept under; without one there are no buttons, and its long parts stand in the messages. */
  readonly id?: string | undefined;
  /** Whether everybody in the channel sees it. */
  readonly shown?: boolean;
  /** Uploaded pictures by the place of their block; the others are told by their alt text. */
  readonly pictures?: ReadonlyMap<number, string>;
  /** The ask, told where others see the answer. */
  readonly requested?: string;
  /** Whether its pictures stand in the asker's direct messages: the answer says so. */
  readonly direct?: boolean;
  /** Whether its ask can be opened as a form. */
  readonly changeable?: boolean;
}

/** The messages of an answer, in order. */
export function render(answer: Answer, showing: Showing = {}): readonly SlackMessage[] {
  if ('reference' in answer) {
    const text = sayFault(answer.reference, answer.outage);
    return messagesOf(text, said(text), []);
  }
  if ('problems' in answer) {
    const { form, problems, again, example } = answer;
    const offered = {
      form: form !== undefined,
      fix: problems[0].fix !== undefined,
      again: again === true,
      example: example !== undefined,
    };
    const rows = showing.id === undefined ? [] : problemRows(showing.id, offered);
    return messagesOf(CHAT.problem, problemBlocks(answer.problems), rows);
  }
  if ('why' in answer) {
    const heading = answer.data.emergency ? CHAT.emergency : CHAT.refusal;
    const blocks = [
      ...said(heading, true),
      ...answer.why.split('\n').flatMap((line) => said(line)),
      ...saidLines(undefined, [{ label: `${CHAT.call}:`, text: answer.call }]),
      ...cautionBlocks(answer.cautions),
    ];
    return messagesOf(`${heading}: ${answer.why}`, blocks, []);
  }
  return replyMessages(answer, showing);
}

/** One block of a reply that stands behind a button, as messages; undefined when there is no such block. */
export function renderPart(reply: Reply, place: number): readonly SlackMessage[] | undefined {
  const block = reply.blocks[place];
  return block && isPart(block) ? messagesOf(block.title, blockBlocks(block), []) : undefined;
}

/** The sources of a reply, each once. */
export function renderSources(reply: Reply): readonly SlackMessage[] {
  const lines = [...new Set(reply.sources.map((source) => `${saySource(source)} (${source.standing})`))];
  if (lines.length === 0) return messagesOf(CHAT.noSources, said(CHAT.noSources), []);
  return messagesOf(
    CHAT.sources,
    saidLines(
      CHAT.sources,
      lines.map((text) => ({ label: '•', text })),
    ),
    [],
  );
}

/** A sentence of our own as a message. */
export function note(text: string): SlackMessage {
  return { text: escapedRich(text), blocks: said(text) };
}

function replyMessages(reply: Reply, showing: Showing): readonly SlackMessage[] {
  const { id, requested, shown = false, direct = false, changeable = false } = showing;
  const pictures = drawingsOf(reply);
  const assumed = assumedOf(reply);
  // Without buttons everything stands in its own order; with them what is looked at comes first, and what is looked up last.
  const first = id === undefined ? [] : pictures.slice(0, MOST_PICTURES);
  const before = [
    ...said(reply.headline, true),
    ...(reply.example === undefined ? [] : said(reply.example)),
    ...(requested === undefined ? [] : saidLines(undefined, [{ label: `${SLACK.requested}:`, text: requested }])),
    ...first.flatMap(({ place, drawing }) => pictureBlocks(drawing, showing.pictures?.get(place))),
    ...(direct ? said(SLACK.pictureDirect(first.length)) : []),
  ];
  const after = [
    ...saidLines(
      CHAT.assumed,
      assumed.map((text) => ({ label: '•', text })),
    ).filter(() => assumed.length > 0),
    ...cautionBlocks(reply.cautions),
  ];
  const all = reply.blocks
    .map((block, place) => ({ block, place }))
    .filter(({ block }) => id === undefined || block.kind !== 'picture')
    .map(({ block, place }) => ({ part: isPart(block), blocks: blockBlocks(block, showing.pictures?.get(place)) }));
  const whole = [...before, ...all.flatMap(({ blocks }) => blocks), ...after];
  if (id === undefined) return messagesOf(reply.headline, whole, []);
  const offers = offersOf(reply);
  const more = pictures.length > first.length ? pictures.length : 0;
  const rows = (parts: readonly ReplyPart[]): readonly SlackBlock[] =>
    answerRows(id, offers, { parts, pictures: more, changeable, shown });
  if (slackSize(whole) <= INLINE && pagesOf(whole).length === 1) return messagesOf(reply.headline, whole, rows([]));
  const read = all.flatMap(({ part, blocks }) => (part ? [] : blocks));
  return messagesOf(reply.headline, [...before, ...read, ...after], rows(offers.parts));
}

/** Pictures alone, as a message of their own; undefined where none of them was uploaded. */
export function renderPictures(reply: Reply, pictures: ReadonlyMap<number, string>): SlackMessage | undefined {
  const blocks = drawingsOf(reply)
    .filter(({ place }) => pictures.has(place))
    .flatMap(({ place, drawing }) => pictureBlocks(drawing, pictures.get(place)));
  const [message] =
    blocks.length === 0 ? [] : messagesOf(reply.headline, [...said(reply.headline, true), ...blocks], []);
  return message;
}

function messagesOf(
  headline: string,
  blocks: readonly SlackBlock[],
  rows: readonly SlackBlock[],
): readonly SlackMessage[] {
  const text = escapedRich(cut(oneLine(headline) || EMPTY, MESSAGE.text));
  const pages = pagesOf(blocks);
  // The buttons belong to the end of the answer, where the thumb is.
  return pages.map((page, i) => ({ text, blocks: i === pages.length - 1 ? [...page, ...rows] : page }));
}
