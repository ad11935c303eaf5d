/** A table as Slack shows it: narrow ones in fixed-width characters, wider ones as table blocks, the widest as lists. */

import { oneLine, tableLines } from '../../chat/files.ts';
import type { Block } from '../../reply/reply.ts';
import { MONOSPACE, TABLE } from './limits.ts';
import { EMPTY, type Line, type SlackBlock, said, saidCode, saidLines } from './rich.ts';

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
