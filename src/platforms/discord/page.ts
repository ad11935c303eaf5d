/** Messages as they are built: texts, pictures and files packed into as few messages as Discord's limits let. */

import {
  type APIActionRowComponent,
  type APIComponentInContainer,
  type APIComponentInMessageActionRow,
  ComponentType,
} from 'discord.js';
import { oneLine, tableLines } from '../../chat/files.ts';
import type { Drawing } from '../../reply/drawing.ts';
import { ADDRESS, type Block, type Caution, type FileForm, type Result } from '../../reply/reply.ts';
import { CHAT } from '../../text/chat-text.ts';
import { ALT_TEXT, MESSAGE_BYTES, MESSAGE_FILES, MESSAGE_TEXT } from './limits.ts';

/** A file of a message: a drawing, rasterised when it is sent, or one made of the answer's data then, or text. */
export type OutFile =
  | {
      readonly name: string;
      readonly title: string;
      readonly alt: string;
      readonly of: { readonly data: Result; readonly as: FileForm };
    }
  | { readonly name: string; readonly title: string; readonly alt: string; readonly drawing: Drawing }
  | { readonly name: string; readonly text: string };

/** A row of buttons, or a list. */
export type ButtonRow = APIActionRowComponent<APIComponentInMessageActionRow>;

/** One message. */
export interface DiscordMessage {
  readonly components: readonly APIComponentInContainer[];
  readonly files: readonly OutFile[];
}

/** A section of an answer: lines of Markdown, lines of a code block, or pictures. */
export type Section =
  | { readonly kind: 'lines'; readonly lines: readonly string[] }
  | { readonly kind: 'code'; readonly lines: readonly string[] }
  | { readonly kind: 'pictures'; readonly drawings: readonly Drawing[] };

const FENCE = '```';
const FENCED = 2 * FENCE.length + 2;

/** Sections in order, packed into messages; none is left out, and a line too long for a message goes on in the next. */
export function packedMessages(sections: readonly Section[]): readonly DiscordMessage[] {
  const pages: Page[] = [newPage()];
  for (const section of sections) {
    if (section.kind === 'pictures') addPictures(pages, section.drawings);
    else addLines(pages, section);
  }
  return pages
    .filter(({ components }) => components.length > 0)
    .map(({ components, files }) => ({ components, files }));
}

interface Page {
  readonly components: APIComponentInContainer[];
  readonly files: OutFile[];
  characters: number;
  bytes: number;
}

function newPage(): Page {
  return { components: [], files: [], characters: 0, bytes: 0 };
}

function addLines(pages: Page[], { kind, lines }: Extract<Section, { lines: readonly string[] }>): void {
  const around = kind === 'code' ? FENCED : 0;
  let open: string[] = [];
  let [characters, bytes] = [around, around];
  const close = (): void => {
    if (open.length === 0) return;
    const text = open.join('\n');
    pushText(pages, kind === 'code' ? `${FENCE}\n${text}\n${FENCE}` : text);
    open = [];
    [characters, bytes] = [around, around];
  };
  for (const line of lines.flatMap(pieces)) {
    const page = last(pages);
    const size = Buffer.byteLength(line) + 1;
    const full =
      page.characters + characters + line.length + 1 > MESSAGE_TEXT || page.bytes + bytes + size > MESSAGE_BYTES;
    if (full) {
      close();
      if (last(pages).components.length > 0) pages.push(newPage());
    }
    open.push(line);
    characters += line.length + 1;
    bytes += size;
  }
  close();
}

/** Text that follows text goes into the same component: a message has forty at most, and buttons need most of them. */
function pushText(pages: Page[], content: string): void {
  const page = last(pages);
  const before = page.components.at(-1);
  const text = before?.type === ComponentType.TextDisplay ? `${before.content}\n${content}` : content;
  if (before?.type === ComponentType.TextDisplay) page.components.pop();
  page.components.push({ type: ComponentType.TextDisplay, content: text });
  page.characters += content.length + 1;
  page.bytes += Buffer.byteLength(content) + 1;
}

function addPictures(pages: Page[], drawings: readonly Drawing[]): void {
  let left = drawings;
  while (left.length > 0) {
    if (last(pages).files.length >= MESSAGE_FILES) pages.push(newPage());
    const page = last(pages);
    const here = left.slice(0, MESSAGE_FILES - page.files.length);
    left = left.slice(here.length);
    const files = here.map((drawing, i) => ({
      name: `plan-${page.files.length + i + 1}.png`,
      title: drawing.title,
      alt: label(describes(drawing), ALT_TEXT),
      drawing,
    }));
    page.files.push(...files);
    // Several pictures of one gallery would be cropped to squares; each by itself is shown whole.
    for (const { name, alt } of files) {
      const item = { media: { url: `attachment://${name}` }, ...(alt === '' ? {} : { description: alt }) };
      page.components.push({ type: ComponentType.MediaGallery, items: [item] });
    }
  }
}

/** A picture in words, for whoever cannot see it. */
export function describes({ title, alt }: Drawing): string {
  return [title, alt].filter((text) => text !== '').join(': ');
}

/** A line in pieces that fit a message by themselves, never cut within an escape or a surrogate pair. */
function pieces(line: string): readonly string[] {
  const most = Math.floor(Math.min(MESSAGE_TEXT, MESSAGE_BYTES / 3)) - FENCED - 2;
  if (line.length <= most) return [line];
  const found: string[] = [];
  let rest = line;
  while (rest.length > most) {
    const space = rest.lastIndexOf(' ', most);
    let at = space > most / 2 ? space + 1 : most;
    if (/[\ud800-\udbff]/.test(rest.charAt(at - 1))) at -= 1;
    const slashes = /(?<!\\)\\*$/.exec(rest.slice(0, at))?.[0].length ?? 0;
    if (slashes % 2 === 1) at -= 1;
    found.push(rest.slice(0, at));
    rest = rest.slice(at);
  }
  return [...found, rest];
}

function last(pages: Page[]): Page {
  const page = pages.at(-1);
  if (!page) throw new Error('no page was begun');
  return page;
}

// The blocks of an answer as sections of messages: Markdown for a phone, a code block where a table is narrow
// enough.

/** Characters of a line of a code block that a phone shows without breaking it. */
const PHONE_WIDTH = 38;

/** A block; a picture is no text and has none here. */
export function blockSections(block: Block): readonly Section[] {
  switch (block.kind) {
    case 'text':
      return [textLines(['', escapedMarkdown(block.text)])];
    case 'facts': {
      const facts = block.facts.map(
        // In these marks an address opens, and is not looked at by Discord itself.
        ({ label, value, opens }) =>
          `**${escapedMarkdown(label)}:** ${opens && ADDRESS.test(value) ? `<${value}>` : escapedMarkdown(value)}`,
      );
      return [textLines([...(block.title === undefined ? [''] : titled(block.title)), ...facts])];
    }
    case 'table':
      return [textLines(titled(block.title)), tableSection(block.columns, block.rows)];
    case 'steps':
      return [
        textLines([...titled(block.title), ...block.steps.map((step, i) => `${i + 1}. ${escapedMarkdown(step)}`)]),
      ];
    case 'checklist':
      return [textLines([...titled(block.title), ...block.items.map((item) => `☐ ${escapedMarkdown(item)}`)])];
    case 'picture':
      return [];
  }
}

/** Every caution whole. */
export function cautionSection(cautions: readonly Caution[]): readonly Section[] {
  return list(
    CHAT.cautions,
    cautions.map(({ text }) => text),
    '⚠ ',
  );
}

/** Lines of Markdown. */
export function textLines(all: readonly string[]): Section {
  return { kind: 'lines', lines: all };
}

function list(title: string, items: readonly string[], mark: string): readonly Section[] {
  return items.length === 0
    ? []
    : [textLines([...titled(title), ...items.map((item) => `${mark}${escapedMarkdown(item)}`)])];
}

function titled(title: string): readonly string[] {
  return ['', `**${escapedMarkdown(title)}**`];
}

/** Columns lined up where a phone has room for them, else a line for each row with its columns named. */
function tableSection(columns: readonly string[], rows: readonly (readonly string[])[]): Section {
  const lined = tableLines([columns, ...rows]);
  if (lined.every((line) => [...line].length <= PHONE_WIDTH)) return { kind: 'code', lines: lined.map(spaced) };
  return textLines(
    rows.map(([first = '', ...cells]) =>
      [
        `**${escapedMarkdown([columns[0] ?? '', first].join(' '))}**`,
        ...cells.flatMap((cell, i) =>
          cell === '' ? [] : [`${escapedMarkdown(columns[i + 1] ?? '')}: ${escapedMarkdown(cell)}`],
        ),
      ].join(' · '),
    ),
  );
}

/** Kept verbatim, runs of spaces too: they line the columns up. */
function spaced(line: string): string {
  return line
    .split(/( +)/)
    .map((part) => (/^ *$/.test(part) ? part : verbatim(part)))
    .join('');
}

// Text on its way into Discord's Markdown: nothing in it pings, links, formats or looks like a message of somebody
// else.

/** Holds a mention apart and is not seen. */
const APART = '\u200b';

/** One line of plain text in Markdown. */
export function escapedMarkdown(text: string): string {
  return oneLine(text)
    .replace(/[\\*_~`|<[\]]/g, '\\$&')
    .replace(/^[#>+-]/, '\\$&')
    .replace(/^(\d+)([.)])(?=\s|$)/, '$1\\$2')
    .replaceAll('://', ':\\//')
    .replaceAll('@', `@${APART}`);
}

/** One line inside a code span or a code block, where only backticks mean anything. */
export function verbatim(text: string): string {
  return oneLine(text).replaceAll('`', 'ˋ').replaceAll('@', `@${APART}`);
}

/** A code span; empty text has no code span of its own. */
export function code(text: string): string {
  // A backslash must not be taken for the escape of the closing mark.
  const line = verbatim(text).replace(/\\$/, '\\ ');
  return line === '' ? '' : `\`${line}\``;
}

/** Plain text where no Markdown is read (labels, poll answers, placeholders), at most `most` characters. */
export function label(text: string, most: number): string {
  const line = oneLine(text).replaceAll('@', `@${APART}`);
  if (line.length <= most) return line;
  const cut = line.slice(0, most - 1);
  // Half a surrogate pair is no text.
  return `${/[\ud800-\udbff]$/.test(cut) ? cut.slice(0, -1) : cut}…`;
}
