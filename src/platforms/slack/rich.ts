/** Texts as Slack blocks in which nothing is markup: rich text is taken literally, so no name, link or emoji comes of it. */

import type { types } from '@slack/bolt';
import { oneLine, tableLines } from '../../chat/files.ts';
import type { Block } from '../../reply/reply.ts';
import { MONOSPACE, RICH, TABLE } from './limits.ts';

export type SlackBlock = types.KnownBlock;

/** One line: a label in bold before its text. */
interface Line {
  readonly label?: string;
  readonly text: string;
  /** The text is an address, to be opened. */
  readonly opens?: boolean;
}

/** Longer labels and titles stand as text of their own. */
const LONGEST_LABEL = 300;

/** What stands for an empty text, which Slack refuses. */
export const EMPTY = '\u2013';

/** The text for a `text` field of Slack's own markup: only these three characters begin anything there. */
export function escapedRich(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');
}

/** A plain text object, cut to `most` characters. */
export function slackPlainText(text: string, most: number): types.PlainTextElement {
  return { type: 'plain_text', text: cut(oneLine(text) || EMPTY, most), emoji: false };
}

/** A text no longer than `most`, its end marked as cut; characters outside the basic plane stay whole. */
export function cut(text: string, most: number): string {
  if (text.length <= most) return text;
  return `${head(text, most - 1)}…`;
}

/** A sentence, in bold where it is a title or the headline; nothing for an empty one. */
export function said(text: string, bold = false): readonly SlackBlock[] {
  return split(oneLine(text), RICH.characters).map((part) => richText([run(part, bold)]));
}

/** Lines under a title, in as few blocks as their length allows. */
export function saidLines(title: string | undefined, lines: readonly Line[]): readonly SlackBlock[] {
  const name = oneLine(title ?? '');
  const long = name.length > LONGEST_LABEL;
  const whole = [...(name === '' || long ? [] : [{ label: name, text: '' }]), ...lines.flatMap(wholeLines)];
  const blocks: SlackBlock[] = long ? [...said(name, true)] : [];
  let elements: types.RichTextElement[] = [];
  let [size, count] = [0, 0];
  const close = (): void => {
    if (elements.length > 0) blocks.push(richText(elements));
    elements = [];
    [size, count] = [0, 0];
  };
  for (const { label = '', text, opens } of whole) {
    const length = label.length + text.length + 1;
    if (count === RICH.lines || size + length > RICH.characters) close();
    if (count > 0) elements.push(run('\n', false));
    if (label !== '') elements.push(run(label, true));
    if (text !== '') elements.push(opens ? { type: 'link', url: text } : run(text, false));
    size += length;
    count += 1;
  }
  close();
  return blocks;
}

/** Something to type as it is, in fixed-width characters. */
export function saidCode(text: string): readonly SlackBlock[] {
  return split(text, RICH.characters).map((part) => ({
    type: 'rich_text',
    elements: [{ type: 'rich_text_preformatted', elements: [{ type: 'text', text: part }] }],
  }));
}

/** Characters of all texts in a block. */
export function slackSize(value: unknown): number {
  if (Array.isArray(value)) return value.reduce((sum: number, one) => sum + slackSize(one), 0);
  if (typeof value !== 'object' || value === null) return 0;
  return Object.entries(value).reduce((sum, [key, one]) => {
    if (typeof one !== 'string') return sum + slackSize(one);
    return key === 'text' || key === 'alt_text' ? sum + one.length : sum;
  }, 0);
}

/** A line on one line, and in several where it is longer than a block; an empty one is left out. */
function wholeLines({ label = '', text, opens }: Line): readonly Line[] {
  if (opens) return [{ label: `${oneLine(label)} `, text, opens }];
  const [whole, rest] = [oneLine(label), oneLine(text)];
  const name = whole.length > LONGEST_LABEL ? '' : whole;
  const lead = name === whole ? rest : `${whole} ${rest}`;
  const [first = '', ...more] = split(lead, RICH.characters - LONGEST_LABEL - 2);
  if (name === '' && first === '') return [];
  return [{ label: name === '' ? '' : `${name} `, text: first }, ...more.map((part) => ({ text: part }))];
}

function richText(elements: types.RichTextElement[]): SlackBlock {
  return { type: 'rich_text', elements: [{ type: 'rich_text_section', elements }] };
}

function run(text: string, bold: boolean): types.RichTextElement {
  return bold ? { type: 'text', text, style: { bold: true } } : { type: 'text', text };
}

/** Parts of at most `most` characters, broken at spaces where there are any; none of an empty text. */
function split(text: string, most: number): readonly string[] {
  const parts: string[] = [];
  let rest = text;
  while (rest.length > most) {
    const part = head(rest, most);
    const space = part.lastIndexOf(' ');
    const end = space > most / 2 ? space : part.length;
    parts.push(part.slice(0, end));
    rest = rest.slice(end).replace(/^ /, '');
  }
  return rest === '' ? parts : [...parts, rest];
}

/** The first characters, a pair of surrogates never broken. */
function head(text: string, most: number): string {
  const last = text.charCodeAt(most - 1);
  return text.slice(0, last >= 0xd800 && last <= 0xdbff ? most - 1 : most);
}

// A table as Slack shows it: narrow ones in fixed-width characters, wider ones as table blocks, the widest as
// lists.

type Table = Extract<Block, { readonly kind: 'table' }>;

/** The blocks of a table, its title before them; every cell is kept whole. */
export function saidTable({ title, columns, rows }: Table): readonly SlackBlock[] {
  const width = Math.max(columns.length, ...rows.map(({ length }) => length));
  const all = [columns, ...rows].map((row) => Array.from({ length: width }, (_, i) => oneLine(row[i] ?? '')));
  const [heads = [], ...body] = all;
  const longest = body.reduce((most, row) => Math.max(most, lengthOf(row)), lengthOf(heads));
  if (width === 0 || width > TABLE.columns || longest > TABLE.characters / 3) return asList(title, heads, body);
  return [...said(title, true), ...(asCode(heads, body) ?? asTables(heads, body))];
}

function asCode(heads: readonly string[], body: readonly (readonly string[])[]): readonly SlackBlock[] | undefined {
  // A long table is never this narrow in all, and lining it up only to see so is slow.
  if (body.length > MONOSPACE.characters / 4) return undefined;
  const lines = tableLines([heads, ...body]);
  const text = lines.join('\n');
  const narrow = lines.every((line) => [...line].length <= MONOSPACE.columns);
  return narrow && text.length <= MONOSPACE.characters ? saidCode(text) : undefined;
}

/** Tables that each fit a message, the head over every one. */
function asTables(heads: readonly string[], body: readonly (readonly string[])[]): readonly SlackBlock[] {
  const tables: (readonly string[])[][] = [[]];
  let size = lengthOf(heads);
  for (const row of body) {
    const full = (tables.at(-1)?.length ?? 0) >= TABLE.rows - 1 || size + lengthOf(row) > TABLE.characters;
    if (full) {
      tables.push([]);
      size = lengthOf(heads);
    }
    tables.at(-1)?.push(row);
    size += lengthOf(row);
  }
  return tables.map((rows) => ({
    type: 'table',
    column_settings: heads.map(() => ({ is_wrapped: true })),
    rows: [heads, ...rows].map((row) => row.map((text) => ({ type: 'raw_text', text: text || EMPTY }))),
  }));
}

/** A row as lines, each cell behind its column's name. */
function asList(title: string, heads: readonly string[], body: readonly (readonly string[])[]): readonly SlackBlock[] {
  const lines = body.flatMap((row): Line[] =>
    row.flatMap((text, i) => (text === '' ? [] : [{ label: heads[i] ? `${heads[i]}:` : '', text }])),
  );
  return saidLines(title, lines);
}

function lengthOf(row: readonly string[]): number {
  return row.reduce((sum, cell) => sum + Math.max(1, cell.length), 0);
}
