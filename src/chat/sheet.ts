/** An answer as files to attach where it is too long for a chat: its whole text, and each table as CSV. */

import type { Block, Reply } from '../reply/reply.ts';
import { saySource } from '../text/help-text.ts';
import { SHEET } from '../text/sheets-text.ts';
import { assumedOf } from './offers.ts';

const GAP = '  ';

/** Titled blocks, or a whole reply, as plain text lines with their tables lined up. */
export function sheetText(reply: Reply, blocks: readonly Block[] = reply.blocks): string {
  const list = (title: string, items: readonly string[]): readonly string[] =>
    items.length === 0 ? [] : ['', title, ...items.map((item) => `- ${oneLine(item)}`)];
  const sources = [...new Set(reply.sources.map((source) => `${saySource(source)} (${source.standing})`))];
  return [
    oneLine(reply.headline),
    ...(reply.example === undefined ? [] : [oneLine(reply.example)]),
    ...blocks.flatMap((block) => ['', ...blockLines(block)]),
    ...list(SHEET.assumed, assumedOf(reply)),
    ...list(
      SHEET.cautions,
      reply.cautions.map(({ text }) => text),
    ),
    ...list(SHEET.sources, sources),
    '',
  ].join('\n');
}

/** A table by RFC 4180; a cell that a spreadsheet would take for a formula is marked as text by an apostrophe. */
export function sheetCsv({ columns, rows }: Extract<Block, { readonly kind: 'table' }>): string {
  return [columns, ...rows].map((row) => `${row.map(csvCell).join(',')}\r\n`).join('');
}

function csvCell(text: string): string {
  const safe = /^\s*(?:[=+@]|-(?![\d.,]+\D*$))/.test(text) || /^[\t\r]/.test(text) ? `'${text}` : text;
  return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}

function blockLines(block: Block): readonly string[] {
  switch (block.kind) {
    case 'text':
      return [oneLine(block.text)];
    case 'facts':
      return [
        ...(block.title === undefined ? [] : [oneLine(block.title)]),
        ...block.facts.map(({ label, value }) => `${oneLine(label)}: ${oneLine(value)}`),
      ];
    case 'table':
      return [oneLine(block.title), ...tableLines([block.columns, ...block.rows])];
    case 'steps':
      return [oneLine(block.title), ...block.steps.map((step, i) => `${i + 1}. ${oneLine(step)}`)];
    case 'checklist':
      return [oneLine(block.title), ...block.items.map((item) => `[ ] ${oneLine(item)}`)];
    case 'picture':
      return [oneLine(block.drawing.title), oneLine(block.drawing.alt)];
  }
}

/** Rows with their columns lined up; the first row is the head. */
export function tableLines(rows: readonly (readonly string[])[]): readonly string[] {
  const cells = rows.map((row) => row.map(oneLine));
  const widths: number[] = [];
  for (const row of cells)
    for (const [i, cell] of row.entries()) widths[i] = Math.max(widths[i] ?? 0, [...cell].length);
  const line = (row: readonly string[]): string =>
    row
      .map((cell, i) => cell + ' '.repeat((widths[i] ?? 0) - [...cell].length))
      .join(GAP)
      .trimEnd();
  const [head = [], ...body] = cells;
  return [line(head), widths.map((width) => '-'.repeat(width)).join(GAP), ...body.map(line)];
}

/** Text on one line, without control characters and marks that turn the writing direction. */
export function oneLine(text: string): string {
  return text
    .replace(/[\p{Cc}\u200e\u200f\u2028-\u202e\u2066-\u2069]/gu, ' ')
    .replace(/\s+/g, ' ')
    .trim();
}
