/** An answer as Slack messages: its brief first, its sections when they are opened, nothing in it taken as markup. Pure, total. */

import { briefOf, sectionOffers, sectionsOf } from '../../chat/brief.ts';
import type { ReplyWithForm } from '../../chat/command.ts';
import { oneLine } from '../../chat/files.ts';
import { assumedOf, isPart, offersOf } from '../../chat/offers.ts';
import type { Answer } from '../../chat/pipeline.ts';
import type { Drawing } from '../../reply/drawing.ts';
import { ADDRESS, type Block, type Caution, type Problem, type Reply } from '../../reply/reply.ts';
import { CHAT, SLACK, sayFault } from '../../text/chat-text.ts';
import { answerRows, problemRows } from './buttons.ts';
import { MESSAGE } from './limits.ts';
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

// The parts of an answer as Slack blocks: every kind of block, problems, cautions.

/** A block of a reply; a picture by what it shows, for it comes as a file. */
export function blockBlocks(block: Block): readonly SlackBlock[] {
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
      return saidLines(block.drawing.title, [{ text: block.drawing.alt }]);
  }
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

/** The drawings of a reply, in order. */
export function drawingsOf({ blocks }: Reply): readonly { readonly drawing: Drawing }[] {
  return blocks.flatMap((block) => (block.kind === 'picture' ? [{ drawing: block.drawing }] : []));
}

/** What is sent: `text` is the notification, what a screen reader reads, and what a client without blocks shows. */
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
  /** Whether it can be shown to a channel. */
  readonly showable?: boolean;
  /** The ask, told where others see the answer. */
  readonly requested?: string;
  /** Whether its ask can be opened as a form. */
  readonly changeable?: boolean;
  /** Whether a project is what is missing. */
  readonly begins?: boolean;
}

/** The messages of an answer, in order. */
export function render(answer: Answer, showing: Showing = {}): readonly SlackMessage[] {
  if ('reference' in answer) {
    const text = sayFault(answer.reference, answer.outage);
    return messagesOf([text], said(text), []);
  }
  if ('problems' in answer) {
    const { form, problems, again, example, choices = [] } = answer;
    const offered = {
      form: form !== undefined,
      fix: problems[0].fix !== undefined,
      again: again === true,
      example: example !== undefined,
      begins: showing.begins === true,
    };
    const rows = showing.id === undefined ? [] : problemRows(showing.id, offered, choices);
    return messagesOf(problemWords(problems), problemBlocks(problems), rows);
  }
  if ('why' in answer) {
    const heading = answer.data.emergency ? CHAT.emergency : CHAT.refusal;
    const why = answer.why.split('\n');
    const blocks = [
      ...headed(heading),
      ...why.flatMap((line) => said(line)),
      ...saidLines(undefined, [{ label: `${CHAT.call}:`, text: answer.call }]),
      ...cautionBlocks(answer.cautions),
    ];
    const cautions = answer.cautions.map(({ text }) => text);
    return messagesOf(
      [`${heading}: ${why[0]}`, ...why.slice(1), `${CHAT.call}: ${answer.call}`, ...cautions],
      blocks,
      [],
    );
  }
  return replyMessages(answer, showing);
}

/** Characters of a line to type that are read out: what else is wrong comes behind it. */
const LONGEST_HEARD = 500;

/** What is heard of problems: each with what was read, and what to type instead. */
function problemWords(problems: readonly Problem[]): readonly string[] {
  return problems.flatMap(({ expected, got, fix }) => [
    expected,
    ...(got.trim() === '' ? [] : [`${CHAT.read}: ${got}`]),
    ...(fix === undefined ? [] : [`${CHAT.type}: /floorhand ${cut(oneLine(fix), LONGEST_HEARD)}`]),
  ]);
}

/** A line as a heading, where it is short enough for one. */
export function headed(text: string): readonly SlackBlock[] {
  const line = oneLine(text);
  return line !== '' && line.length <= MESSAGE.header
    ? [{ type: 'header', text: slackPlainText(line, MESSAGE.header) }]
    : said(text, true);
}

/** One block of a reply that stands behind a button, as messages; undefined when there is no such block. */
export function renderPart(reply: Reply, place: number): readonly SlackMessage[] | undefined {
  const block = reply.blocks[place];
  return block && isPart(block) ? messagesOf(undefined, blockBlocks(block), []) : undefined;
}

/** A section of a reply, or with `more` all of them; undefined where there is none. */
export function renderSection(reply: Reply, wanted: string): readonly SlackMessage[] | undefined {
  const blocks = sectionsOf(reply)
    .filter(({ id }) => wanted === 'more' || id === wanted)
    .flatMap((section) => section.blocks);
  if (blocks.length > 0)
    return messagesOf(
      undefined,
      blocks.flatMap((block) => blockBlocks(block)),
      [],
    );
  return wanted === 'sources' ? messagesOf([CHAT.noSources], said(CHAT.noSources), []) : undefined;
}

/** Sentences of our own as a message, a line each. */
export function note(text: string): SlackMessage {
  return { text: escapedRich(cut(text, MESSAGE.text)), blocks: text.split('\n').flatMap((line) => said(line)) };
}

function replyMessages(reply: ReplyWithForm, showing: Showing): readonly SlackMessage[] {
  const { id, requested, showable = false, changeable = false } = showing;
  const before = [
    ...headed(reply.headline),
    ...(reply.example === undefined ? [] : said(reply.example)),
    ...(requested === undefined ? [] : saidLines(undefined, [{ label: `${SLACK.requested}:`, text: requested }])),
  ];
  const { lines, assumption, cautions } = briefOf(reply);
  const other = assumption === reply.example ? undefined : assumption;
  const words = [reply.headline, reply.example ?? '', ...lines, other ?? '', ...cautions.map((text) => `⚠ ${text}`)];
  if (id === undefined) return messagesOf(words, [...before, ...wholeBlocks(reply)], []);
  const opened = sectionsOf(reply)
    .filter((section) => reply.opens === 'more' || section.id === reply.opens)
    .flatMap(({ blocks }) => blocks.filter(({ kind }) => kind !== 'picture'));
  const blocks = [
    ...before,
    ...saidLines(undefined, [
      ...lines.map((text) => ({ text })),
      ...(other === undefined ? [] : [{ text: other }]),
      ...cautions.map((text) => ({ label: '⚠', text })),
    ]),
    ...opened.flatMap((block) => blockBlocks(block)),
  ];
  const offers = offersOf(reply);
  const rows = answerRows(id, offers, {
    sections: sectionOffers(reply, Infinity),
    opened: reply.opens,
    files: offers.parts.length > 0,
    changeable,
    showable,
    understood: reply.understood !== undefined,
  });
  return messagesOf([...words, ...opened.map(blockWords)], blocks, rows);
}

/** A block of a reply as it is read out. */
function blockWords(block: Block): string {
  return spoken(blockBlocks(block));
}

/** All of a reply in its own order, where nothing can be pressed. */
function wholeBlocks(reply: Reply): readonly SlackBlock[] {
  const assumed = assumedOf(reply);
  return [
    ...reply.blocks.flatMap((block) => blockBlocks(block)),
    ...saidLines(
      CHAT.assumed,
      assumed.map((text) => ({ label: '•', text })),
    ).filter(() => assumed.length > 0),
    ...cautionBlocks(reply.cautions),
  ];
}

/** The words of blocks, as a screen reader says them. */
function spoken(node: unknown): string {
  if (Array.isArray(node)) return node.map(spoken).join('');
  if (typeof node !== 'object' || node === null) return '';
  const { type } = node as { readonly type?: unknown };
  const within = Object.entries(node)
    .map(([name, one]) => (typeof one !== 'string' ? spoken(one) : name === 'text' || name === 'url' ? one : ''))
    .join('');
  return type === 'rich_text' || type === 'header' ? `${within}\n` : type === 'raw_text' ? `${within}; ` : within;
}

/** Messages with what each says in words: of the first one `words`, else what stands in its blocks. */
function messagesOf(
  words: readonly string[] | undefined,
  blocks: readonly SlackBlock[],
  rows: readonly SlackBlock[],
): readonly SlackMessage[] {
  const pages = pagesOf(blocks);
  const first = words?.map(oneLine).filter((line) => line !== '');
  return pages.map((page, i) => {
    const text = (i === 0 && first ? first.join('\n') : spoken(page)).trim();
    // The buttons belong to the end of the answer, where the thumb is.
    return {
      text: escapedRich(cut(text || EMPTY, MESSAGE.text)),
      blocks: i === pages.length - 1 ? [...page, ...rows] : page,
    };
  });
}
