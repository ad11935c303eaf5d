/** An answer as Discord messages: its brief first, its sections when they are opened, what is too long in a file. Pure, total. */

import { Buffer } from 'node:buffer';
import { ComponentType } from 'discord.js';
import { briefOf, sectionsOf } from '../../chat/brief.ts';
import type { Problems } from '../../chat/command.ts';
import { sheetCsv, sheetText } from '../../chat/files.ts';
import { isPart } from '../../chat/offers.ts';
import type { Answer } from '../../chat/pipeline.ts';
import type { Drawing } from '../../reply/drawing.ts';
import type { Block, Refusal, Reply } from '../../reply/reply.ts';
import { CHAT, sayFault } from '../../text/chat-text.ts';
import { ALT_TEXT, ANSWER_MESSAGES, MESSAGE_COMPONENTS, MESSAGE_FILES, MOST_PARTS, PHONE } from './limits.ts';
import {
  blockSections,
  cautionSection,
  code,
  type DiscordMessage,
  describes,
  escapedMarkdown,
  label,
  type OutFile,
  packedMessages,
  type Section,
  textLines,
} from './page.ts';
import type { Outgoing } from './types.ts';

/** The messages of an answer, without its buttons. At least one; those of a reply are parts to leaf through. */
export function render(answer: Answer): readonly DiscordMessage[] {
  if ('reference' in answer)
    return packedMessages([textLines([escapedMarkdown(sayFault(answer.reference, answer.outage))])]);
  if ('problems' in answer) return withFile(problemSections(answer), () => []);
  if ('why' in answer) return withFile(refusalSections(answer), () => []);
  return renderReply(answer);
}

// The sections of an answer, opened by their buttons.

/** One section of an answer in parts, or with `more` all of them; undefined where there is no such section. */
export function renderSections(reply: Reply, wanted: string | undefined): readonly DiscordMessage[] | undefined {
  const all = sectionsOf(reply);
  const found = wanted === 'more' ? all : all.filter(({ id }) => id === wanted);
  if (found.length === 0) return wanted === 'sources' ? packedMessages([textLines([CHAT.noSources])]) : undefined;
  const blocks = found.flatMap((section) => section.blocks);
  const drawings = drawingsIn(blocks);
  const sections = [headline(reply.headline), ...exampleSection(reply), ...openedSections(blocks)];
  const pages = packedMessages(sections);
  const tables = blocks.filter(isPart).some(({ kind }) => kind === 'table');
  const files = tables ? filesOf(reply, blocks) : [];
  if (pages.length <= MOST_PARTS && drawings.length + files.length <= MESSAGE_FILES)
    return attached(pages, files, CHAT.tables);
  return essential(reply, filesOf(reply, blocks), drawings);
}

/** Blocks whole: texts, and each picture with its description where that is longer than a picture's own may be. */
function openedSections(blocks: readonly Block[]): readonly Section[] {
  return blocks.flatMap((block): readonly Section[] => {
    if (block.kind !== 'picture') return blockSections(block);
    const said = describes(block.drawing);
    const long = said.length > ALT_TEXT ? [textLines([escapedMarkdown(said)])] : [];
    return [{ kind: 'pictures', drawings: [block.drawing] }, ...long];
  });
}

function drawingsIn(blocks: readonly Block[]): readonly Drawing[] {
  return blocks.flatMap((block) => (block.kind === 'picture' ? [block.drawing] : []));
}

// An answer in short: what is read before anything is pressed.

function renderReply(reply: Reply): readonly DiscordMessage[] {
  const { opens } = reply;
  const plan = planInBrief(reply);
  const opened = sectionsOf(reply)
    .filter(({ id }) => opens === 'more' || id === opens)
    .flatMap(({ blocks }) => blocks)
    .filter((block) => plan === undefined || block.kind !== 'picture');
  const pages = packedMessages([
    ...briefSections(reply),
    ...(plan ? [{ kind: 'pictures', drawings: [plan] } as const] : []),
    ...openedSections(opened),
  ]);
  const made = madeFiles(reply);
  if (pages.length <= MOST_PARTS && drawingsIn(opened).length + made.length < MESSAGE_FILES)
    return attached(pages, made);
  return essential(reply, [...made, ...filesOf(reply, reply.blocks)], drawingsIn(opened));
}

/** Lead, lines, what was assumed and the cautions; a plank that is only an example stands right below the lead. */
function briefSections(reply: Reply): readonly Section[] {
  const { lead, lines, assumption, cautions } = briefOf(reply);
  const said = [
    ...lines.map(escapedMarkdown),
    ...(assumption === undefined || assumption === reply.example ? [] : [escapedMarkdown(assumption)]),
    ...cautions.map((text) => `⚠ ${escapedMarkdown(text)}`),
  ];
  return [headline(lead), ...exampleSection(reply), textLines(said)];
}

/** The one picture of an answer, where it is no taller than wide and its message no higher than a phone's screen. */
export function planInBrief(reply: Reply): Drawing | undefined {
  const [plan, ...others] = drawingsIn(reply.blocks);
  if (!plan || others.length > 0 || describes(plan).length > ALT_TEXT) return undefined;
  if (plan.height > plan.width) return undefined;
  const picture = Math.min(PHONE.picture, (PHONE.width * plan.height) / plan.width);
  return briefHeight(reply) + picture + PHONE.rows <= PHONE.screen ? plan : undefined;
}

/** About how high the brief is on a phone, its sender's name above it, in px. */
export function briefHeight(reply: Reply): number {
  const [head = '', ...lines] = briefSections(reply).flatMap((section) => ('lines' in section ? section.lines : []));
  const high = (text: string, { line, characters }: { readonly line: number; readonly characters: number }): number =>
    Math.ceil(text.length / characters) * line;
  return lines.reduce((sum, line) => sum + high(line, PHONE), PHONE.name + high(head, PHONE.head));
}

/** The files that the answer itself comes with. */
function madeFiles({ files = [], data }: Reply): readonly OutFile[] {
  return files.map(({ name, title, alt, as }) => ({ name, title, alt: label(alt, ALT_TEXT), of: { data, as } }));
}

/** The brief, the first pictures of what was opened, and the whole in a file. */
function essential(reply: Reply, files: readonly OutFile[], drawings: readonly Drawing[]): readonly DiscordMessage[] {
  const room = MESSAGE_FILES - files.length;
  const shown: readonly Section[] =
    drawings.length > 0 ? [{ kind: 'pictures', drawings: drawings.slice(0, room) }] : [];
  const more = drawings.length - room;
  const notes = [CHAT.whole, ...(more > 0 ? [CHAT.morePictures(more)] : [])];
  const pages = packedMessages([...briefSections(reply), textLines(notes), ...shown]);
  if (pages.length <= MOST_PARTS) return attached(pages, files);
  // A brief beyond all parts: the file holds every word of it.
  return attached(packedMessages([textLines([CHAT.whole])]), files);
}

function withFile(sections: readonly Section[], files: () => readonly OutFile[]): readonly DiscordMessage[] {
  const pages = packedMessages(sections);
  if (pages.length <= ANSWER_MESSAGES) return pages;
  const text = sections.flatMap((section) => ('lines' in section ? section.lines : [])).join('\n');
  const whole = files();
  return attached(
    pages.slice(0, ANSWER_MESSAGES),
    whole.length > 0 ? whole : [{ name: 'answer.txt', text }],
    CHAT.whole,
  );
}

/** The card itself, and the rows, buttons and lists under an answer. */
const CONTROLS = 14;

/** Files under the first message, each with a component that shows it. */
function attached(
  [first, ...rest]: readonly DiscordMessage[],
  files: readonly OutFile[],
  note?: string,
): readonly DiscordMessage[] {
  if (!first || files.length === 0) return first ? [first, ...rest] : rest;
  const said = note === undefined ? [] : [{ type: ComponentType.TextDisplay, content: note } as const];
  const shown = files.map(({ name }) => ({ type: ComponentType.File, file: { url: `attachment://${name}` } }) as const);
  const components = [...first.components, ...said, ...shown].slice(0, MESSAGE_COMPONENTS - CONTROLS);
  return [{ components, files: [...first.files, ...files] }, ...rest];
}

/** The whole answer as text, and its tables for a spreadsheet. */
function filesOf(reply: Reply, blocks: readonly Block[]): readonly OutFile[] {
  const tables = blocks.flatMap((block) =>
    block.kind === 'table' ? [`${csvTitle(block.title)}${sheetCsv(block)}`] : [],
  );
  return [
    { name: 'answer.txt', text: sheetText(reply) },
    ...(tables.length > 0 ? [{ name: 'tables.csv', text: tables.join('\r\n') }] : []),
  ];
}

function csvTitle(title: string): string {
  return sheetCsv({ kind: 'table', title, columns: [title], rows: [] });
}

/** The first thing to be told is the question; the others follow with what was read of them. */
function problemSections({ problems }: Problems): readonly Section[] {
  const fixes = new Set(problems.map(({ fix }) => fix));
  const shared = problems.length > 1 && fixes.size === 1;
  const typed = (fix: string | undefined): readonly string[] =>
    fix === undefined ? [] : [`-# ${CHAT.type}: ${code(fix)}`];
  const read = (got: string): readonly string[] => (got.trim() === '' ? [] : [`-# ${CHAT.read}: ${code(got)}`]);
  const told = problems.map(({ option, got, expected, fix }, i) => {
    const below = [...read(got), ...(shared ? [] : typed(fix))];
    if (i === 0) return [headline(expected), textLines(below)];
    return [textLines([`**${escapedMarkdown(option)}:** ${escapedMarkdown(expected)}`, ...below])];
  });
  return [...told.flat(), textLines(shared ? typed(problems[0].fix) : [])];
}

function refusalSections({ why, call, cautions, data }: Refusal): readonly Section[] {
  const heading = `### ${data.emergency ? CHAT.emergency : CHAT.refusal}`;
  const said = [heading, ...why.split('\n').map(escapedMarkdown), `**${CHAT.call}:** ${escapedMarkdown(call)}`];
  return [textLines(said), ...cautionSection(cautions)];
}

/** A long headline is bold by itself in no message: marks around it would be cut apart. */
function headline(text: string): Section {
  return textLines([text.length > 300 ? escapedMarkdown(text) : `### ${escapedMarkdown(text)}`]);
}

function exampleSection({ example }: Reply): readonly Section[] {
  return example === undefined ? [] : [textLines([escapedMarkdown(example)])];
}

// An answer in the plainest form that Discord takes: its headline, and the whole as a text file.

const HEADLINE = 1000;

/** One message with one file at most, no buttons, no pictures. */
export function plainest(answer: Answer): Outgoing {
  if (!('headline' in answer)) {
    const [first] = render(answer);
    const components = (first?.components ?? []).filter(({ type }) => type === ComponentType.TextDisplay);
    return { components, attachments: [], files: [] };
  }
  const name = 'answer.txt';
  return {
    components: [
      {
        type: ComponentType.TextDisplay,
        content: `${escapedMarkdown(label(answer.headline, HEADLINE))}\n${CHAT.whole}`,
      },
      { type: ComponentType.File, file: { url: `attachment://${name}` } },
    ],
    attachments: [{ id: '0', filename: name }],
    files: [{ name, data: Buffer.from(sheetText(answer)), contentType: 'text/plain; charset=utf-8' }],
  };
}
