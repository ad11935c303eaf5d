/** Texts as Slack blocks in which nothing is markup: rich text is taken literally, so no name, link or emoji comes of it. */

import type { types } from '@slack/bolt';
import { oneLine } from '../../chat/files.ts';
import { RICH } from './limits.ts';

export type SlackBlock = types.KnownBlock;

/** One line: a label in bold before its text. */
export interface Line {
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
export function escaped(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');
}

/** A plain text object, cut to `most` characters. */
export function plainText(text: string, most: number): types.PlainTextElement {
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
export function sizeOf(value: unknown): number {
  if (Array.isArray(value)) return value.reduce((sum: number, one) => sum + sizeOf(one), 0);
  if (typeof value !== 'object' || value === null) return 0;
  return Object.entries(value).reduce((sum, [key, one]) => {
    if (typeof one !== 'string') return sum + sizeOf(one);
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
export function split(text: string, most: number): readonly string[] {
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
