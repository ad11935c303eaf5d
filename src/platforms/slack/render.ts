/** An answer as Slack messages: its brief first, its sections when they are opened, nothing in it taken as markup. Pure, total. */

import type { webApi } from '@slack/bolt';
import { briefOf, sectionOffers, sectionsOf } from '../../chat/brief.ts';
import { oneLine } from '../../chat/files.ts';
import { assumedOf, isPart, offersOf } from '../../chat/offers.ts';
import type { Answer } from '../../chat/pipeline.ts';
import type { Drawing } from '../../reply/drawing.ts';
import { ADDRESS, type Block, type Caution, type Problem, type Reply } from '../../reply/reply.ts';
import { CHAT, SLACK, sayFault } from '../../text/chat-text.ts';
import { Unworked } from '../../workers/queue.ts';
import { answerRows, problemRows } from './buttons.ts';
import { BUTTON, IMAGE, MESSAGE, MOST_PICTURES } from './limits.ts';
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

/** The first thing to be told is the question; what was read, and what to type behind each, or once below when one ask mends all. */
function problemBlocks(problems: readonly Problem[]): readonly SlackBlock[] {
  const shared = problems.length > 1 && new Set(problems.map(({ fix }) => fix)).size === 1;
  const typed = (fix: string | undefined): readonly SlackBlock[] =>
    fix === undefined
      ? []
      : [...saidLines(undefined, [{ label: `${CHAT.type}:`, text: '' }]), ...saidCode(`/floorhand ${oneLine(fix)}`)];
  const read = (got: string) => (got.trim() === '' ? [] : [{ label: `${CHAT.read}:`, text: got }]);
  return [
    ...problems.flatMap(({ option, got, expected, fix }, i) => [
      ...(i === 0 ? said(expected, true) : []),
      ...saidLines(undefined, [...(i === 0 ? [] : [{ label: `${option}:`, text: expected }]), ...read(got)]),
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
    const { form, problems, again, example, choices = [] } = answer;
    const offered = {
      form: form !== undefined,
      fix: problems[0].fix !== undefined,
      again: again === true,
      example: example !== undefined,
    };
    const rows = showing.id === undefined ? [] : problemRows(showing.id, offered, choices);
    return messagesOf(problems[0].expected, problemBlocks(problems), rows);
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

/** A section of a reply, or with `more` all of them, its pictures told by what they show; undefined where there is none. */
export function renderSection(reply: Reply, wanted: string): readonly SlackMessage[] | undefined {
  const blocks = sectionsOf(reply)
    .filter(({ id }) => wanted === 'more' || id === wanted)
    .flatMap((section) => section.blocks);
  if (blocks.length > 0)
    return messagesOf(
      reply.headline,
      blocks.flatMap((block) => blockBlocks(block)),
      [],
    );
  return wanted === 'sources' ? messagesOf(CHAT.noSources, said(CHAT.noSources), []) : undefined;
}

/** A sentence of our own as a message. */
export function note(text: string): SlackMessage {
  return { text: escapedRich(text), blocks: said(text) };
}

function replyMessages(reply: Reply, showing: Showing): readonly SlackMessage[] {
  const { id, requested, shown = false, direct = false, changeable = false } = showing;
  const before = [
    ...said(reply.headline, true),
    ...(reply.example === undefined ? [] : said(reply.example)),
    ...(requested === undefined ? [] : saidLines(undefined, [{ label: `${SLACK.requested}:`, text: requested }])),
  ];
  if (id === undefined) return messagesOf(reply.headline, [...before, ...wholeBlocks(reply, showing)], []);
  const pictures = drawingsOf(reply);
  const first = pictures.slice(0, MOST_PICTURES);
  const { lines, assumption, cautions } = briefOf(reply);
  const opened = sectionsOf(reply)
    .filter((section) => reply.opens === 'more' || section.id === reply.opens)
    .flatMap(({ blocks }) => blocks.filter(({ kind }) => kind !== 'picture'));
  const blocks = [
    ...before,
    ...saidLines(undefined, [
      ...lines.map((text) => ({ text })),
      ...(assumption === undefined || assumption === reply.example ? [] : [{ text: assumption }]),
      ...cautions.map((text) => ({ label: '⚠', text })),
    ]),
    ...first.flatMap(({ place, drawing }) => pictureBlocks(drawing, showing.pictures?.get(place))),
    ...(direct ? said(SLACK.pictureDirect(first.length)) : []),
    ...opened.flatMap((block) => blockBlocks(block)),
  ];
  const sections = sectionOffers(reply, BUTTON.aRow, pictures.length === first.length ? ['plan'] : []);
  const offers = offersOf(reply);
  const files = offers.parts.length > 0;
  return messagesOf(reply.headline, blocks, answerRows(id, offers, { sections, files, changeable, shown }));
}

/** All of a reply in its own order, where nothing can be pressed. */
function wholeBlocks(reply: Reply, { pictures, direct }: Showing): readonly SlackBlock[] {
  const assumed = assumedOf(reply);
  return [
    ...(direct ? said(SLACK.pictureDirect(drawingsOf(reply).length)) : []),
    ...reply.blocks.flatMap((block, place) => blockBlocks(block, pictures?.get(place))),
    ...saidLines(
      CHAT.assumed,
      assumed.map((text) => ({ label: '•', text })),
    ).filter(() => assumed.length > 0),
    ...cautionBlocks(reply.cautions),
  ];
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
