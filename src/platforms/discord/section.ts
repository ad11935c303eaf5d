/** The blocks of an answer as sections of messages: Markdown for a phone, a code block where a table is narrow enough. */

import { tableLines } from '../../chat/files.ts';
import { ADDRESS, type Block, type Caution, type Source } from '../../reply/reply.ts';
import { CHAT } from '../../text/chat-text.ts';
import { saySource } from '../../text/help-text.ts';
import { escaped, verbatim } from './escape.ts';
import type { Section } from './page.ts';

/** Characters of a line of a code block that a phone shows without breaking it. */
const PHONE_WIDTH = 38;

/** A block; a picture is no text and has none here. */
export function blockSections(block: Block): readonly Section[] {
  switch (block.kind) {
    case 'text':
      return [lines(['', escaped(block.text)])];
    case 'facts': {
      const facts = block.facts.map(
        // In these marks an address opens, and is not looked at by Discord itself.
        ({ label, value, opens }) =>
          `**${escaped(label)}:** ${opens && ADDRESS.test(value) ? `<${value}>` : escaped(value)}`,
      );
      return [lines([...(block.title === undefined ? [''] : titled(block.title)), ...facts])];
    }
    case 'table':
      return [lines(titled(block.title)), tableSection(block.columns, block.rows)];
    case 'steps':
      return [lines([...titled(block.title), ...block.steps.map((step, i) => `${i + 1}. ${escaped(step)}`)])];
    case 'checklist':
      return [lines([...titled(block.title), ...block.items.map((item) => `☐ ${escaped(item)}`)])];
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

/** How doubtful things were read. */
export function assumedSection(assumed: readonly string[]): readonly Section[] {
  return list(CHAT.assumed, assumed, '- ');
}

/** Each source once, with how far it was checked. */
export function sourceSection(sources: readonly Source[]): readonly Section[] {
  const said = [...new Set(sources.map((source) => `${saySource(source)} (${source.standing})`))];
  return list(CHAT.sources, said, '- ');
}

/** Lines of Markdown. */
export function lines(all: readonly string[]): Section {
  return { kind: 'lines', lines: all };
}

function list(title: string, items: readonly string[], mark: string): readonly Section[] {
  return items.length === 0 ? [] : [lines([...titled(title), ...items.map((item) => `${mark}${escaped(item)}`)])];
}

function titled(title: string): readonly string[] {
  return ['', `**${escaped(title)}**`];
}

/** Columns lined up where a phone has room for them, else a line for each row with its columns named. */
function tableSection(columns: readonly string[], rows: readonly (readonly string[])[]): Section {
  const lined = tableLines([columns, ...rows]);
  if (lined.every((line) => [...line].length <= PHONE_WIDTH)) return { kind: 'code', lines: lined.map(spaced) };
  return lines(
    rows.map(([first = '', ...cells]) =>
      [
        `**${escaped([columns[0] ?? '', first].join(' '))}**`,
        ...cells.flatMap((cell, i) => (cell === '' ? [] : [`${escaped(columns[i + 1] ?? '')}: ${escaped(cell)}`])),
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
