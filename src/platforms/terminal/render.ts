/** An answer as text for a terminal: pure, total, and nothing left out. */

import stringWidth from 'string-width';
import { briefOf, sectionsOf } from '../../chat/brief.ts';
import type { Problems } from '../../chat/command.ts';
import { assumedOf } from '../../chat/offers.ts';
import type { Answer } from '../../chat/pipeline.ts';
import type { Block, Caution, Refusal, Reply, SectionId } from '../../reply/reply.ts';
import { BRIEF, saySource } from '../../text/answer-text.ts';
import { sayFault, TERMINAL } from '../../text/chat-text.ts';
import { REASON, REASONS } from '../../text/handbook-text.ts';
import { WRONG } from '../../text/reader-text.ts';

// What a terminal can show.

/** Columns when the terminal does not tell its own. */
export const COLUMNS = 80;
/** Narrower than this, tables are written as lists. */
const NARROWEST_TABLE = 48;
/** Lines of history kept. */
export const HISTORY = 500;

// What a terminal must not be sent: control characters that an asker's own words could hold.

/** The text with a space in place of every control character and every mark that turns the writing direction. */
function plain(text: string): string {
  // biome-ignore lint/suspicious/noControlCharactersInRegex: control characters are what is looked for
  return text.replace(/[\u0000-\u001f\u007f-\u009f\u200e\u200f\u2028-\u202e\u2066-\u2069]/g, ' ');
}

// Text wrapped to a width, at spaces where there are any, and never inside a measure.

/** Spaces that hold together what is read together: `24 3/4"`, `604 mm`, `no. 12`, `6 x 48`. */
const HELD =
  /(?<=\d) (?=\d+\/\d)|(?<=[\d"'/]) (?=(?:mm|cm|m|m²|in|ft|sq ft|yd|kg|lb|%|€)(?![\p{L}\d]))|(?<=\bno\.) (?=\d)|(?<=\d['′]) (?=\d)|(?<=\bsq) (?=ft\b)|(?<=\d["']?) (?=[x×] \d)|(?<=\d["']? [x×]) (?=\d)/gu;
const HOLD = '\u00a0';

const SIGNS = new Intl.Segmenter('en', { granularity: 'grapheme' });
const MOST_SIGNS = 4000;
const signWidths = new Map<string, number>();

/** Columns that a text takes. Each sign is measured once: string-width holds it against every emoji that there is. */
function columnsOf(text: string): number {
  if (/^[ -~]*$/.test(text)) return text.length;
  // Signs of one escape sequence are measured together.
  if (text.includes('\u001b') || text.includes('\u009b')) return stringWidth(text);
  let columns = 0;
  for (const { segment } of SIGNS.segment(text)) {
    const known = signWidths.get(segment) ?? stringWidth(segment);
    if (signWidths.size < MOST_SIGNS && segment.length < 20) signWidths.set(segment, known);
    columns += known;
  }
  return columns;
}

/** Lines no wider than `width` columns, without control characters; a wider word is broken. Empty text is one empty line. */
export function wrap(text: string, width: number): readonly string[] {
  const room = Math.max(1, width);
  const lines: string[] = [];
  let line = '';
  let filled = 0;
  for (const word of words(text, room)) {
    const wide = columnsOf(word);
    if (line !== '' && filled + 1 + wide <= room) {
      line += ` ${word}`;
      filled += 1 + wide;
      continue;
    }
    if (line !== '') lines.push(line);
    const parts = wide > room ? broken(word, room) : [word];
    lines.push(...parts.slice(0, -1));
    line = parts.at(-1) ?? '';
    filled = wide > room ? columnsOf(line) : wide;
  }
  lines.push(line);
  return lines;
}

/** What is kept on one line, if it fits on one. */
function words(text: string, room: number): readonly string[] {
  const held = plain(text).replace(/\s+/g, ' ').replace(HELD, HOLD);
  return held.split(' ').flatMap((word) => {
    if (!word.includes(HOLD)) return [word];
    const loose = word.replaceAll(HOLD, ' ');
    return columnsOf(loose) > room ? loose.split(' ') : [loose];
  });
}

/** A word in parts no wider than `room`, never inside a sign that several characters make; a wider sign stands alone. */
function broken(word: string, room: number): readonly string[] {
  const parts: string[] = [];
  let part = '';
  let filled = 0;
  for (const { segment } of SIGNS.segment(word)) {
    const wide = columnsOf(segment);
    if (part !== '' && filled + wide > room) {
      parts.push(part);
      part = '';
      filled = 0;
    }
    part += segment;
    filled += wide;
  }
  return [...parts, part];
}

// A table in characters: columns as wide as their text, the last ones wrapped to fit.

const GAP = 2;
const NARROWEST_COLUMN = 8;

/** The width below which so many columns do not fit. */
export function narrowestTable(columns: number): number {
  return columns * (NARROWEST_COLUMN + GAP) - GAP;
}

/** Lines of a table no wider than `width`; every cell is kept whole, wrapped where it must be. */
export function terminalTable(
  columns: readonly string[],
  rows: readonly (readonly string[])[],
  width: number,
): readonly string[] {
  const room = width - GAP * (columns.length - 1);
  const widest = (heads: readonly (readonly string[])[]): readonly number[] =>
    heads.map((head, i) => Math.max(...[...head, ...rows.map((row) => row[i] ?? '')].map((cell) => columnsOf(cell))));
  const natural = widest(columns.map((column) => [column]));
  // Long heads give way before cells do.
  const tight = widest(columns.map((column) => column.split(/\s+/)));
  const widths = squeezed(sum(natural) <= room ? natural : tight, room);
  const line = (cells: readonly string[]): readonly string[] => {
    const wrapped = widths.map((wide, i) => wrap(cells[i] ?? '', wide));
    const height = Math.max(...wrapped.map((lines) => lines.length));
    return Array.from({ length: height }, (_, k) =>
      wrapped
        .map((lines, i) => pad(lines[k] ?? '', widths[i] ?? 0))
        .join(' '.repeat(GAP))
        .trimEnd(),
    );
  };
  const rule = widths.map((wide) => '-'.repeat(wide)).join(' '.repeat(GAP));
  return [...line(columns), rule, ...rows.flatMap(line)];
}

/** Widths that fit: the widest columns give way first, none below the narrowest. */
function squeezed(natural: readonly number[], room: number): readonly number[] {
  const widths = [...natural];
  for (let total = sum(widths); total > room; total--) {
    const widest = widths.indexOf(Math.max(...widths));
    const now = widths[widest] ?? 0;
    if (now <= NARROWEST_COLUMN) break;
    widths[widest] = now - 1;
  }
  return widths;
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}

function pad(text: string, width: number): string {
  return text + ' '.repeat(Math.max(0, width - columnsOf(text)));
}

/** Columns to write in, and whether the terminal shows colour. */
export interface TerminalPage {
  readonly width: number;
  readonly colour: boolean;
}

/** The lines that are seen first, and how many of them are cautions. */
export interface BriefLines {
  readonly lines: readonly string[];
  readonly cautions: number;
}

/** No brief is longer, whatever it holds. */
const LONGEST_BRIEF = 16;

/** What an answer is in short; a fault, a problem and a refusal are short as they are. */
export function briefLines(answer: Answer, sheet: TerminalPage): BriefLines {
  if ('reference' in answer)
    return { lines: wrap(sayFault(answer.reference, answer.outage), sheet.width), cautions: 0 };
  if ('problems' in answer) return { lines: questionLines(answer, sheet).slice(0, LONGEST_BRIEF), cautions: 0 };
  if ('why' in answer) return refusalBrief(answer, sheet);
  const { lead, lines, assumption, cautions, sections } = briefOf(answer);
  const reasons = (answer.reasons ?? []).flatMap(({ entry }) => REASONS[entry] ?? []).map(REASON.word);
  const next = nextLine([...sections, ...reasons], answer.understood !== undefined, sheet);
  const head = title(lead, sheet);
  const careful = cautions.flatMap((text) => hanging('', BRIEF.caution(text), sheet));
  const foot = [
    ...(assumption === undefined ? [] : wrap(assumption, sheet.width)),
    ...careful,
    ...(next === '' ? [] : hanging('', next, sheet)),
  ];
  const room = Math.max(0, LONGEST_BRIEF - head.length - foot.length);
  return {
    lines: [...head, ...lines.flatMap((line) => wrap(line, sheet.width)).slice(0, room), ...foot],
    cautions: careful.length,
  };
}

/** What can be typed next, on one line if that is wide enough. */
function nextLine(sections: readonly string[], wrong: boolean, { width }: TerminalPage): string {
  const more = sections.length > 0 ? BRIEF.more(sections) : '';
  if (!wrong) return more;
  const whole = [...(more === '' ? [] : [more]), BRIEF.wrong].join('. ');
  return more === '' || whole.length <= width ? whole : `${more}, ${WRONG.word}`;
}

function refusalBrief({ why, call, cautions, data }: Refusal, sheet: TerminalPage): BriefLines {
  const head = [
    ...title(data.emergency ? TERMINAL.emergency : TERMINAL.refusal, sheet),
    ...why.split('\n').flatMap((line) => wrap(line, sheet.width)),
    ...wrap(`${TERMINAL.call}: ${call}`, sheet.width),
  ];
  const careful = cautions.slice(0, 2).flatMap(({ brief, text }) => hanging('- ', brief ?? text, sheet));
  return { lines: [...head, ...careful], cautions: careful.length };
}

/** One section of an answer; all of its blocks. */
export function sectionLines(reply: Reply, id: SectionId, sheet: TerminalPage): readonly string[] {
  const found = sectionsOf(reply).find((one) => one.id === id);
  return (found?.blocks ?? []).flatMap((block) => ['', ...blockLines(block, sheet)]).slice(1);
}

/** The brief, then the section that was itself asked for. */
export function renderBrief(answer: Answer, sheet: TerminalPage): string {
  if (!('headline' in answer)) return trimmed(briefLines(answer, sheet).lines);
  const { opens } = answer;
  if (opens === 'more') return render(answer, sheet);
  const opened = opens === undefined ? [] : sectionLines(answer, opens, sheet);
  return trimmed([...briefLines(answer, sheet).lines, ...(opened.length > 0 ? ['', ...opened] : [])]);
}

function trimmed(lines: readonly string[]): string {
  return lines.map((line) => line.trimEnd()).join('\n');
}

/** The whole answer as lines of text. */
export function render(answer: Answer, sheet: TerminalPage): string {
  const lines =
    'reference' in answer ? wrap(sayFault(answer.reference, answer.outage), sheet.width) : outcomeLines(answer, sheet);
  return lines.map((line) => line.trimEnd()).join('\n');
}

function outcomeLines(answer: Exclude<Answer, { reference: string }>, sheet: TerminalPage): readonly string[] {
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

function replyLines(reply: Reply, sheet: TerminalPage): readonly string[] {
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

function blockLines(block: Block, sheet: TerminalPage): readonly string[] {
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
  sheet: TerminalPage,
): readonly string[] {
  if (sheet.width >= Math.max(NARROWEST_TABLE, narrowestTable(columns.length)))
    return terminalTable(columns, rows, sheet.width);
  return rows.flatMap((row) => [
    ...columns.flatMap((column, i) => (row[i] ? hanging(`${column}: `, row[i] ?? '', sheet) : [])),
    '',
  ]);
}

/** Each problem with what was read; the fix behind each that has one, or once below when one line mends all. */
function problemLines({ problems, example }: Problems, sheet: TerminalPage): readonly string[] {
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

/** The questions that are open, each with what was read of it, and one line that would be accepted. */
function questionLines(
  { problems, example, complaint, choices = [] }: Problems,
  sheet: TerminalPage,
): readonly string[] {
  const [first] = problems;
  const fix = problems.find((problem) => problem.fix !== undefined)?.fix;
  return [
    ...problems.flatMap(({ expected, got }, i) =>
      i === 0
        ? title(expected, sheet)
        : hanging('- ', got === '' ? expected : `${expected} (${TERMINAL.read}: ${got})`, sheet),
    ),
    ...choices.flatMap(({ label, ask }) => hanging('- ', `${label}: ${ask}`, sheet)),
    ...(first.got === '' || (first.got.length > 60 && !complaint)
      ? []
      : wrap(`${TERMINAL.read}: ${first.got}`, sheet.width)),
    ...(fix === undefined ? [] : hanging(`${TERMINAL.type}: `, fix, sheet)),
    ...(example === undefined ? [] : hanging(`${TERMINAL.example}: `, example, sheet)),
  ];
}

function cautionLines(cautions: readonly Caution[], sheet: TerminalPage): readonly string[] {
  return section(
    TERMINAL.cautions,
    cautions.map(({ text }) => text),
    sheet,
  );
}

function section(name: string, items: readonly string[], sheet: TerminalPage): readonly string[] {
  return items.length === 0 ? [] : ['', ...title(name, sheet), ...items.flatMap((item) => hanging('- ', item, sheet))];
}

/** Text behind a mark, its further lines indented under its own first letter. */
function hanging(mark: string, text: string, sheet: TerminalPage): readonly string[] {
  const indent = Math.min(mark.length, 4);
  const [first = '', ...rest] = wrap(`${mark.trimStart()}${text}`, sheet.width - indent);
  const lead = mark.length - mark.trimStart().length;
  return [`${' '.repeat(lead)}${first}`, ...rest.map((line) => `${' '.repeat(indent)}${line}`)];
}

/** A line of its own that stands out, wrapped. */
function title(text: string, sheet: TerminalPage): readonly string[] {
  return wrap(text, sheet.width).map((line) => (sheet.colour ? `\u001b[1m${line}\u001b[22m` : line));
}
