/** An answer as Discord messages: pure, total, headline and cautions whole, what is too long in further messages or a file. */

import { Buffer } from 'node:buffer';
import { ComponentType } from 'discord-api-types/v10';
import type { Problems } from '../../chat/command.ts';
import { sheetCsv, sheetText } from '../../chat/files.ts';
import { assumedOf, isPart } from '../../chat/offers.ts';
import type { Answer } from '../../chat/pipeline.ts';
import type { Block, Refusal, Reply } from '../../reply/reply.ts';
import { CHAT, sayFault } from '../../text/chat-text.ts';
import { code, escapedMarkdown, label } from './escape.ts';
import { ALT_TEXT, ANSWER_MESSAGES, MESSAGE_COMPONENTS, MESSAGE_FILES } from './limits.ts';
import {
  assumedSection,
  blockSections,
  cautionSection,
  type DiscordMessage,
  describes,
  type OutFile,
  packedMessages,
  type Section,
  sourceSection,
  textLines,
} from './page.ts';
import type { Outgoing } from './types.ts';

/** Sheets up to this many characters stand in the answer itself; longer ones behind a button. */
const SHORT_SHEETS = 1000;

/** The messages of an answer, without its buttons. At least one. */
export function render(answer: Answer): readonly DiscordMessage[] {
  if ('reference' in answer)
    return packedMessages([textLines([escapedMarkdown(sayFault(answer.reference, answer.outage))])]);
  if ('problems' in answer) return withFile(problemSections(answer), () => []);
  if ('why' in answer) return withFile(refusalSections(answer), () => []);
  return renderReply(answer);
}

/** Whether an answer's tables, steps and lists are too long to stand in it. */
export function hasLongSheets(reply: Reply): boolean {
  const sheets = reply.blocks.filter(isPart).flatMap(blockSections);
  return sheets.reduce((sum, section) => sum + lengthOf(section), 0) > SHORT_SHEETS;
}

/** The sheets of an answer to work from: messages, and files of the same where they are long. */
export function renderSheets(reply: Reply): readonly DiscordMessage[] {
  const sheets = reply.blocks.filter(isPart);
  const sections = [
    headline(reply.headline),
    ...exampleSection(reply),
    ...sheets.flatMap(blockSections),
    ...cautionSection(reply.cautions),
  ];
  const pages = packedMessages(sections);
  const files = filesOf(reply, sheets);
  if (pages.length <= ANSWER_MESSAGES) return attached(pages, files, CHAT.tables);
  return essential(reply, files);
}

/** The sources of an answer. */
export function renderSources(reply: Reply): readonly DiscordMessage[] {
  const sections = sourceSection(reply.sources);
  return withFile(sections.length > 0 ? sections : [textLines([CHAT.noSources])], () => filesOf(reply, []));
}

function renderReply(reply: Reply): readonly DiscordMessage[] {
  const shown = hasLongSheets(reply) ? reply.blocks.filter((block) => !isPart(block)) : reply.blocks;
  const drawings = reply.blocks.flatMap((block) => (block.kind === 'picture' ? [block.drawing] : []));
  // The picture comes early on a phone: behind what is asked for most, which is the first block, unless it is first itself.
  const [first, ...others] = shown;
  const pictures: readonly Section[] = drawings.length > 0 ? [{ kind: 'pictures', drawings }] : [];
  const pages = packedMessages([
    headline(reply.headline),
    ...exampleSection(reply),
    ...(first ? blockSections(first) : []),
    ...pictures,
    ...assumedSection(assumedOf(reply)),
    ...others.flatMap(blockSections),
    ...drawings
      .map(describes)
      .filter(({ length }) => length > ALT_TEXT)
      .map((said) => textLines([escapedMarkdown(said)])),
    ...cautionSection(reply.cautions),
  ]);
  const made = madeFiles(reply);
  if (pages.length <= ANSWER_MESSAGES) return attached(pages, made);
  return essential(reply, [...made, ...filesOf(reply, reply.blocks)]);
}

/** The files that the answer itself comes with. */
function madeFiles({ files = [], data }: Reply): readonly OutFile[] {
  return files.map(({ name, title, alt, as }) => ({ name, title, alt: label(alt, ALT_TEXT), of: { data, as } }));
}

/** What must be read, and the whole in a file: headline and cautions, and the first pictures. */
function essential(reply: Reply, files: readonly OutFile[]): readonly DiscordMessage[] {
  const room = MESSAGE_FILES - files.length;
  const drawings = reply.blocks.flatMap((block) => (block.kind === 'picture' ? [block.drawing] : []));
  const shown: readonly Section[] =
    drawings.length > 0 ? [{ kind: 'pictures', drawings: drawings.slice(0, room) }] : [];
  const more = drawings.length - room;
  const notes = [CHAT.whole, ...(more > 0 ? [CHAT.morePictures(more)] : [])];
  const cautions = cautionSection(reply.cautions);
  const pages = packedMessages([
    headline(reply.headline),
    ...exampleSection(reply),
    textLines(notes),
    ...shown,
    ...cautions,
  ]);
  if (pages.length <= ANSWER_MESSAGES) return attached(pages, files);
  // A headline or cautions beyond three messages: the file holds every word of them.
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

/** Files under the first message, each with a component that shows it. */
function attached(
  [first, ...rest]: readonly DiscordMessage[],
  files: readonly OutFile[],
  note?: string,
): readonly DiscordMessage[] {
  if (!first || files.length === 0) return first ? [first, ...rest] : rest;
  const said = note === undefined ? [] : [{ type: ComponentType.TextDisplay, content: note } as const];
  const shown = files.map(({ name }) => ({ type: ComponentType.File, file: { url: `attachment://${name}` } }) as const);
  const components = [...first.components, ...said, ...shown].slice(0, MESSAGE_COMPONENTS);
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

function problemSections({ problems }: Problems): readonly Section[] {
  const fixes = new Set(problems.map(({ fix }) => fix));
  const shared = problems.length > 1 && fixes.size === 1;
  const typed = (fix: string | undefined): readonly string[] =>
    fix === undefined ? [] : [`-# ${CHAT.type}: ${code(fix)}`];
  const one = problems.flatMap(({ option, got, expected, fix }) => [
    `**${escapedMarkdown(option)}:** ${escapedMarkdown(expected)}`,
    `-# ${CHAT.read}: ${code(got) || CHAT.nothing}`,
    ...(shared ? [] : typed(fix)),
  ]);
  const all = shared ? typed(problems[0].fix) : [];
  return [textLines([`**${CHAT.problem}**`, ...one, ...all])];
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

function lengthOf(section: Section): number {
  return 'lines' in section ? section.lines.reduce((sum, line) => sum + line.length + 1, 0) : 0;
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
