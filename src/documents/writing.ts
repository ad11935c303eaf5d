/** Paragraphs, headings, lists and pictures, broken into lines and across pages. */

import { drawable, wrapped } from '../drawing/text.ts';
import type { Drawing } from '../reply/drawing.ts';
import { BOX, type Flow, INK, RULE, type Tag, TYPE, tagOf } from './document-page.ts';

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
