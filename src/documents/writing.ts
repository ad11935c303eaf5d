/** Paragraphs, headings, lists, pictures and tables, broken into lines and across pages. */

import { drawable, textWidth, wrapped } from '../drawing/text.ts';
import type { Drawing } from '../reply/drawing.ts';
import { BAND, BOX, type Flow, INK, type Ink, RULE, type Tag, TYPE, tagOf } from './document-page.ts';

interface Style {
  readonly type?: keyof typeof TYPE;
  readonly bold?: boolean;
  readonly colour?: string;
  readonly indent?: number;
  /** Subtracted from the width at the right. */
  readonly short?: number;
}

/** Text wrapped to a width; at least one line, so that empty text takes up space. */
export function linesOf(text: string, size: number, bold: boolean, width: number): readonly string[] {
  const lines = wrapped(text.replace(/\s+/g, ' ').trim(), size, bold, width);
  return lines.length === 0 ? [''] : lines;
}

/** A paragraph under a tag of its own. */
export function paragraph(flow: Flow, text: string, parent: Tag, style: Style = {}, tag: Tag['type'] = 'P'): void {
  inked(flow, text, tagOf(tag, parent), style);
}

function inked(
  flow: Flow,
  text: string,
  tag: Tag,
  { type = 'body', bold = false, colour = INK, indent = 0, short = 0 }: Style,
): void {
  const { size, line } = TYPE[type];
  for (const one of linesOf(text, size, bold, flow.width - indent - short)) {
    flow.need(line);
    const y = flow.y + line * 0.5 + size * 0.36;
    if (one !== '') flow.ink(tag, { kind: 'text', x: flow.left + indent, y, text: `${one} `, size, bold, colour });
    flow.y += line;
  }
}

/** A heading kept with what follows; `follows` is how much of that must fit. */
export function heading(flow: Flow, text: string, parent: Tag, follows: number): void {
  flow.gap(7);
  const { size, line } = TYPE.heading;
  const height = linesOf(text, size, true, flow.width).length * line;
  flow.need(height + follows);
  paragraph(flow, text, parent, { type: 'heading', bold: true }, 'H2');
  flow.y += 1;
}

/** What goes before an item: a number, a dash, or a checkbox. */
type Mark = { readonly kind: 'text'; readonly text: string } | { readonly kind: 'box'; readonly ticked: boolean };

/** One item of a list, its lines aligned behind its mark. */
export function item(flow: Flow, mark: Mark, text: string, list: Tag, style: Style = {}): void {
  const { type = 'body', indent = 0 } = style;
  const { size, line } = TYPE[type];
  const hang = mark.kind === 'box' ? BOX + 6 : size * 1.9;
  const lines = linesOf(text, size, style.bold ?? false, flow.width - indent - hang - (style.short ?? 0));
  flow.need(Math.min(lines.length, 3) * line);
  const entry = tagOf('LI', list);
  marked(flow, mark, entry, style);
  inked(flow, text, tagOf('LBody', entry), { ...style, indent: indent + hang });
  flow.y += 1.5;
}

function marked(flow: Flow, mark: Mark, entry: Tag, { type = 'body', colour = INK, indent = 0 }: Style): void {
  const { size, line } = TYPE[type];
  const x = flow.left + indent;
  const middle = flow.y + line * 0.5;
  const label = tagOf('Lbl', entry);
  if (mark.kind === 'text') {
    flow.ink(label, {
      kind: 'text',
      x,
      y: middle + size * 0.36,
      text: `${drawable(mark.text)} `,
      size,
      bold: false,
      colour,
    });
  } else box(flow, x, middle, mark.ticked, label);
}

/** A checkbox vertically centered at a height; a ticked one is read out as ticked. */
export function box(flow: Flow, x: number, middle: number, ticked: boolean, tag: Tag | undefined): void {
  flow.ink(undefined, { kind: 'rect', x, y: middle - BOX / 2, width: BOX, height: BOX, stroke: RULE });
  if (ticked)
    flow.ink(tag, { kind: 'text', x: x + 0.8, y: middle + 3.2, text: '✓ ', size: 9, bold: true, colour: INK });
}

// A drawing as large as it fits on one page.

/** Points per unit of a drawing: its text comes out at nine points. */
const LARGEST = 1;
/** A drawing may be reduced to this fraction of its possible size to stay on the current page. */
const SHRINK = 0.8;

/** Centered in the page's width; goes on a new page if it would be too small on this one. */
export function picture(flow: Flow, drawing: Drawing, section: Tag): void {
  const { width, height } = drawing;
  flow.gap(8);
  const best = Math.min(LARGEST, flow.width / width, flow.full / height);
  const here = Math.min(best, flow.rest / height);
  if (here < best * SHRINK) flow.turn();
  const scale = Math.min(best, flow.rest / height);
  figure(flow, drawing, section, { x: flow.left + (flow.width - width * scale) / 2, y: flow.y, scale });
  flow.y += height * scale;
}

/** A drawing in its place on the page. */
export function figure(
  flow: Flow,
  drawing: Drawing,
  section: Tag,
  at: { readonly x: number; readonly y: number; readonly scale: number },
): void {
  const alt = [drawing.title, drawing.alt].filter((text) => text !== '').join(': ');
  flow.ink(tagOf('Figure', section, alt), { kind: 'drawing', ...at, drawing });
}

// Column widths: as wide as the text if there is room, else the short columns are, and the long ones share the rest.

const GUTTER = 9;

const CELL_SIZE = TYPE.cell.size;
const WIDEST_WORD = 110;

/** Widths of the columns' text, adding up to no more than `width` with the gutters. */
function columnWidths(
  rows: readonly (readonly string[])[],
  columns: readonly string[],
  width: number,
): readonly number[] {
  const all = columns.map((head, i) => [head, ...rows.map((row) => row[i] ?? '')]);
  const room = width - GUTTER * (columns.length - 1);
  const natural = all.map((cells) => Math.max(...cells.map((cell, i) => textWidth(cell, CELL_SIZE, i === 0))) + 1);
  const sum = (list: readonly number[]): number => list.reduce((total, one) => total + one, 0);
  if (sum(natural) <= room) return natural;
  const least = all.map((cells, i) => Math.min(natural[i] ?? 0, widestWord(cells)));
  const spare = room - sum(least);
  if (spare <= 0) return least.map((one) => (one / sum(least)) * room);
  const more = shared(
    natural.map((one, i) => one - (least[i] ?? 0)),
    spare,
  );
  return least.map((one, i) => one + (more[i] ?? 0));
}

/** Splits `spare` among the wishes: small ones are met in full, so that only long texts wrap. */
function shared(wishes: readonly number[], spare: number): readonly number[] {
  const given = wishes.map(() => 0);
  const smallFirst = wishes.map((wish, i) => ({ wish, i })).sort((one, other) => one.wish - other.wish);
  let left = spare;
  smallFirst.forEach(({ wish, i }, served) => {
    const share = Math.min(wish, left / (wishes.length - served));
    given[i] = share;
    left -= share;
  });
  return given;
}

function widestWord(cells: readonly string[]): number {
  const words = cells.flatMap((cell, i) => cell.split(/\s+/).map((word) => textWidth(word, CELL_SIZE, i === 0)));
  return Math.min(WIDEST_WORD, Math.max(12, ...words)) + 1;
}

interface Table {
  readonly title: string;
  readonly columns: readonly string[];
  readonly rows: readonly (readonly string[])[];
  readonly boxes: boolean;
}

const { size, line } = TYPE.cell;
const PAD = 1.15;
/** A row with more lines than this may be split across two pages. */
const TALL = 40;

type Lines = readonly (readonly string[])[];

/** The table under its title, which stays with the header and two rows. */
export function table(flow: Flow, { title, columns, rows, boxes }: Table, parent: Tag): void {
  const indent = boxes ? BOX + 7 : 0;
  const widths = columnWidths(rows, columns, flow.width - indent);
  const lefts = widths.map((_, i) => indent + widths.slice(0, i).reduce((sum, one) => sum + one + GUTTER, 0));
  const set = (cells: readonly string[], bold: boolean): Lines =>
    columns.map((_, i) => linesOf(cells[i] ?? '', size, bold, widths[i] ?? 0));
  const head = set(columns, true);
  const headHeight = heightOf(head) + 1;
  const body = rows.map((row) => set(row, false));
  heading(flow, title, parent, heightOf(head) + body.slice(0, 2).reduce((sum, row) => sum + heightOf(row), 0));
  const grid = tagOf('Table', parent);
  const putHead = (tag: Tag | undefined): void => {
    put(flow, head, lefts, tag && tagOf('TR', tag), { type: 'TH', bold: true });
    flow.ink(undefined, { kind: 'rect', x: flow.left, y: flow.y - 0.4, width: flow.width, height: 0.8, fill: INK });
    flow.y += 1;
  };
  putHead(grid);
  body.forEach((row, i) => {
    let left = row;
    let begun = false;
    while (countOf(left) > 0) {
      const height = heightOf(left);
      const breaks = countOf(left) > TALL && flow.rest > 6 * line;
      // The last row never ends up alone under a header: the one before moves with it.
      const after = i === body.length - 2 && i > 0 ? heightOf(body[i + 1] ?? []) : 0;
      if (height + (begun ? 0 : after) > flow.rest && !breaks && flow.y > flow.top + headHeight) {
        flow.turn();
        // On later pages the header is only visual, since it has already been read out.
        putHead(undefined);
      }
      const fits = Math.max(1, Math.floor((flow.rest - 2 * PAD) / line));
      const now = left.map((lines) => lines.slice(0, fits));
      left = left.map((lines) => lines.slice(fits));
      if (i % 2 === 1) {
        flow.ink(undefined, {
          kind: 'rect',
          x: flow.left,
          y: flow.y,
          width: flow.width,
          height: heightOf(now),
          fill: BAND,
        });
      }
      const tag = tagOf('TR', grid);
      if (boxes && !begun) box(flow, flow.left + 1, flow.y + PAD + line / 2, false, undefined);
      begun = true;
      put(flow, now, lefts, tag, { type: 'TD', bold: false });
    }
  });
  flow.ink(undefined, { kind: 'rect', x: flow.left, y: flow.y, width: flow.width, height: 0.5, fill: RULE });
  flow.y += 3;
}

function put(
  flow: Flow,
  cells: Lines,
  lefts: readonly number[],
  row: Tag | undefined,
  { type, bold }: { readonly type: 'TH' | 'TD'; readonly bold: boolean },
): void {
  const top = flow.y + PAD;
  cells.forEach((lines, column) => {
    const x = flow.left + (lefts[column] ?? 0);
    const inks = lines.flatMap((text, i): Ink[] =>
      text === ''
        ? []
        : [{ kind: 'text', x, y: top + line * (i + 0.5) + size * 0.36, text: `${text} `, size, bold, colour: INK }],
    );
    flow.ink(row && tagOf(type, row), ...inks);
  });
  flow.y += heightOf(cells);
}

function countOf(cells: Lines): number {
  return Math.max(0, ...cells.map(({ length }) => length));
}

function heightOf(cells: Lines): number {
  return countOf(cells) * line + 2 * PAD;
}
