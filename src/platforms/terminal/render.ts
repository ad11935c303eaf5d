/** An answer as text for a terminal: pure, total, and nothing left out. */

import type { Problems } from '../../chat/command.ts';
import { assumedOf } from '../../chat/offers.ts';
import type { Answer } from '../../chat/pipeline.ts';
import type { Block, Caution, Reply } from '../../reply/reply.ts';
import { sayFault, TERMINAL } from '../../text/chat-text.ts';
import { saySource } from '../../text/help-text.ts';
import { NARROWEST_TABLE } from './limits.ts';
import { narrowestTable, tableLines } from './table.ts';
import { wrap } from './wrap.ts';

/** Columns to write in, and whether the terminal shows colour. */
export interface Sheet {
  readonly width: number;
  readonly colour: boolean;
}

/** The whole answer as lines of text. */
export function render(answer: Answer, sheet: Sheet): string {
  const lines =
    'reference' in answer ? wrap(sayFault(answer.reference, answer.outage), sheet.width) : outcomeLines(answer, sheet);
  return lines.map((line) => line.trimEnd()).join('\n');
}

function outcomeLines(answer: Exclude<Answer, { reference: string }>, sheet: Sheet): readonly string[] {
  if ('problems' in answer) return problemLines(answer, sheet);
  if ('why' in answer) {
    return [
      ...title(answer.data.emergency ? TERMINAL.emergency : TERMINAL.refusal, sheet),
      ...answer.why.split('\n').flatMap((line) => wrap(line, sheet.width)),
      ...wrap(`${TERMINAL.call}: ${answer.call}`, sheet.width),
      ...cautionLines(answer.cautions, sheet),
    ];
  }
  return replyLines(answer, sheet);
}

function replyLines(reply: Reply, sheet: Sheet): readonly string[] {
  const sources = [...new Set([...reply.sources.map((source) => `${saySource(source)} (${source.standing})`)])];
  return [
    ...title(reply.headline, sheet),
    ...(reply.example === undefined ? [] : wrap(reply.example, sheet.width)),
    ...reply.blocks.flatMap((block) => ['', ...blockLines(block, sheet)]),
    ...section(TERMINAL.assumed, assumedOf(reply), sheet),
    ...cautionLines(reply.cautions, sheet),
    ...section(TERMINAL.sources, sources, sheet),
    ...section(
      TERMINAL.actions,
      reply.actions.map(({ label, ask }) => `${label}: ${ask}`),
      sheet,
    ),
  ];
}

function blockLines(block: Block, sheet: Sheet): readonly string[] {
  switch (block.kind) {
    case 'text':
      return wrap(block.text, sheet.width);
    case 'facts': {
      const lines = block.facts.flatMap(({ label, value }) => hanging(`${label}: `, value, sheet));
      return block.title === undefined ? lines : [...title(block.title, sheet), ...lines];
    }
    case 'table':
      return [...title(block.title, sheet), ...tableOrList(block.columns, block.rows, sheet)];
    case 'steps':
      return [...title(block.title, sheet), ...block.steps.flatMap((step, i) => hanging(`${i + 1}. `, step, sheet))];
    case 'checklist':
      return [...title(block.title, sheet), ...block.items.flatMap((item) => hanging('[ ] ', item, sheet))];
    case 'picture':
      return [...title(block.drawing.title, sheet), ...wrap(block.drawing.alt, sheet.width)];
  }
}

function tableOrList(
  columns: readonly string[],
  rows: readonly (readonly string[])[],
  sheet: Sheet,
): readonly string[] {
  if (sheet.width >= Math.max(NARROWEST_TABLE, narrowestTable(columns.length)))
    return tableLines(columns, rows, sheet.width);
  return rows.flatMap((row) => [
    ...columns.flatMap((column, i) => (row[i] ? hanging(`${column}: `, row[i] ?? '', sheet) : [])),
    '',
  ]);
}

/** Each problem with what was read; the fix behind each that has one, or once below when one line mends all. */
function problemLines({ problems, example }: Problems, sheet: Sheet): readonly string[] {
  const fixes = new Set(problems.map(({ fix }) => fix));
  const shared = problems.length > 1 && fixes.size === 1;
  const type = (fix: string | undefined, mark: string): readonly string[] =>
    fix === undefined ? [] : hanging(`${mark}${TERMINAL.type}: `, fix, sheet);
  return [
    ...title(TERMINAL.problem, sheet),
    ...problems.flatMap(({ option, got, expected, fix }) => [
      ...hanging(`${option}: `, expected, sheet),
      ...hanging(`  ${TERMINAL.read}: `, got === '' ? TERMINAL.nothing : got, sheet),
      ...(shared ? [] : type(fix, '  ')),
    ]),
    ...(shared ? type(problems[0].fix, '') : []),
    ...(example === undefined ? [] : hanging(`${TERMINAL.example}: `, example, sheet)),
  ];
}

function cautionLines(cautions: readonly Caution[], sheet: Sheet): readonly string[] {
  return section(
    TERMINAL.cautions,
    cautions.map(({ text }) => text),
    sheet,
  );
}

function section(name: string, items: readonly string[], sheet: Sheet): readonly string[] {
  return items.length === 0 ? [] : ['', ...title(name, sheet), ...items.flatMap((item) => hanging('- ', item, sheet))];
}

/** Text behind a mark, its further lines indented under its own first letter. */
function hanging(mark: string, text: string, sheet: Sheet): readonly string[] {
  const indent = Math.min(mark.length, 4);
  const [first = '', ...rest] = wrap(`${mark.trimStart()}${text}`, sheet.width - indent);
  const lead = mark.length - mark.trimStart().length;
  return [`${' '.repeat(lead)}${first}`, ...rest.map((line) => `${' '.repeat(indent)}${line}`)];
}

/** A line of its own that stands out, wrapped. */
function title(text: string, sheet: Sheet): readonly string[] {
  return wrap(text, sheet.width).map((line) => (sheet.colour ? `\u001b[1m${line}\u001b[22m` : line));
}
