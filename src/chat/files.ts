/** Answers and project sheets as files: PDF, JSON, CSV, plain text. */

import type { Sheets } from '../reply/job-sheet.ts';
import {
  type Block,
  FILE_LISTS,
  type FileForm,
  type FileList,
  type FileMade,
  type Reply,
  type Result,
} from '../reply/reply.ts';
import { saySource } from '../text/answer-text.ts';
import { FILES, SHEET } from '../text/sheets-text.ts';
import { assumedOf } from './offers.ts';

const LONGEST = 60;

/** A title as lowercase letters, digits and hyphens; empty if it has none. */
export function fileStem(title: string): string {
  const words = title
    .normalize('NFKD')
    .toLowerCase()
    .replace(/\p{M}/gu, '')
    .match(/[a-z0-9]+/g);
  return (words ?? []).join('-').slice(0, LONGEST).replace(/-$/, '');
}

/** All files of one form: one PDF, one JSON document, or a CSV for each list with rows. None if there are no sheets. */
export function filesOf(sheets: Sheets, form: FileForm['form'], paper?: 'letter' | 'a4'): readonly FileMade[] {
  if (sheets.sheets.length === 0) return [];
  if (form === 'pdf') return [fileOf(sheets, { form, ...(paper && { paper }) })];
  if (form === 'json') return [fileOf(sheets, { form })];
  return FILE_LISTS.filter((list) => hasLines(sheets, list)).map((list) => fileOf(sheets, { form, list }));
}

function fileOf(sheets: Sheets, as: FileForm): FileMade {
  const { project, sheets: all } = sheets;
  const [only, ...more] = all;
  const what = as.form === 'csv' ? FILES.lists[as.list] : only && more.length === 0 ? only.title : FILES.all;
  const stem = [fileStem(project) || FILES.stem, fileStem(what)].join('-');
  const alt = as.form === 'csv' ? FILES.listAlt(what) : FILES.alt(all.map(({ title }) => title));
  return { name: `${stem}.${as.form}`, title: FILES.title(project, what), alt, as };
}

function hasLines({ sheets }: Sheets, list: FileList): boolean {
  const of = (key: string) => sheets.filter((sheet) => sheet.key === key);
  if (list === 'cuts') return of('cuts').some(({ pieces = [] }) => pieces.length > 0);
  if (list === 'checklist') return of('checklist').some(({ ticks = [] }) => ticks.length > 0);
  if (list === 'shopping') return of('shopping').some(({ ticks = [] }) => ticks.length > 0);
  return of('guide').some(({ reply: { data } }) => isInRows(data));
}

/** Herringbone has boards but no rows. */
function isInRows(data: Result & { readonly regions?: readonly { readonly rows?: readonly unknown[] }[] }): boolean {
  return data.regions?.some(({ rows = [] }) => rows.length > 0) ?? false;
}

const GAP = '  ';

/** Titled blocks, or a whole reply, as plain text with aligned tables. */
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

/** RFC 4180; a cell that a spreadsheet would read as a formula gets a leading apostrophe. */
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

/** Rows with aligned columns; the first row is the header. */
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

/** One line, without control characters or marks that change the writing direction. */
export function oneLine(text: string): string {
  return text
    .replace(/[\p{Cc}\u200e\u200f\u2028-\u202e\u2066-\u2069]/gu, ' ')
    .replace(/\s+/g, ' ')
    .trim();
}
