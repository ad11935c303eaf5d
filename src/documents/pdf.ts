/** Pages as a tagged, searchable PDF with embedded fonts; the same pages give the same bytes. */

import PDFDocument from 'pdfkit';
import { LETTERING, LOOKS, PATTERNS, SHEET_COLOUR } from '../drawing/svg.ts';
import { FONT_FILES } from '../drawing/text.ts';
import type { Drawing, Place, Shape, ShapeRole } from '../reply/drawing.ts';
import { type Ink, type Page, type Pages, sizeOf, type Tag } from './document-page.ts';

/** The PDF document, and its regular and bold font. */
interface Canvas {
  readonly doc: PDFKit.PDFDocument;
  readonly fonts: { readonly regular: string; readonly bold: string };
}

/** Draws at a position on the page, with a scale in points per unit. */
function drawIn(canvas: Canvas, { width, height, shapes }: Drawing, x: number, y: number, scale: number): void {
  const { doc } = canvas;
  doc.save();
  doc.translate(x, y).scale(scale);
  doc.rect(0, 0, width, height).fill(SHEET_COLOUR);
  for (const shape of shapes) drawShape(canvas, shape);
  doc.restore();
}

function drawShape(canvas: Canvas, shape: Shape): void {
  const { doc } = canvas;
  switch (shape.kind) {
    case 'line':
      path(doc, shape.points, false);
      ink(canvas, shape.role, false);
      break;
    case 'lines':
      for (const line of shape.lines) path(doc, line, false);
      ink(canvas, shape.role, false);
      break;
    case 'rect': {
      const { x, y, width, height, role } = shape;
      const sides: readonly Place[] = [
        [x, y],
        [x + width, y],
        [x + width, y + height],
        [x, y + height],
      ];
      surface(canvas, role, [sides]);
      break;
    }
    case 'polygon':
      surface(canvas, shape.role, shape.rings);
      break;
    case 'arrow':
      arrow(canvas, shape);
      break;
    case 'text':
      letters(canvas, shape);
      break;
  }
}

function letters(
  { doc, fonts }: Canvas,
  { x, y, text, size, bold, anchor, turn, role }: Extract<Shape, { kind: 'text' }>,
): void {
  if (text.trim() === '') return;
  doc.save();
  doc.translate(x, y).rotate(turn);
  doc
    .font(bold ? fonts.bold : fonts.regular)
    .fontSize(size)
    .fillColor(LETTERING[role].fill);
  const width = doc.widthOfString(text);
  const from = anchor === 'start' ? 0 : anchor === 'end' ? -width : -width / 2;
  doc.text(`${text} `, from, 0, { lineBreak: false, baseline: 'alphabetic' });
  doc.restore();
}

function arrow(canvas: Canvas, { from: [ax, ay], to: [bx, by], role }: Extract<Shape, { kind: 'arrow' }>): void {
  const length = Math.hypot(bx - ax, by - ay);
  if (length === 0) return;
  const [dx, dy] = [(bx - ax) / length, (by - ay) / length];
  const head = Math.min(6, length / 2);
  const base: Place = [bx - dx * head, by - dy * head];
  const corner = (side: 1 | -1): Place => [base[0] - side * dy * head * 0.55, base[1] + side * dx * head * 0.55];
  path(canvas.doc, [[ax, ay], base], false);
  ink(canvas, role, false);
  path(canvas.doc, [[bx, by], corner(1), corner(-1)], true);
  canvas.doc.fill(LOOKS[role].fill ?? SHEET_COLOUR);
}

/** Filled even–odd, with the pattern over the fill, then outlined. */
function surface(canvas: Canvas, role: ShapeRole, rings: readonly (readonly Place[])[]): void {
  const { doc } = canvas;
  const { fill, pattern, stroke } = LOOKS[role];
  const rule = rings.length > 1 ? 'even-odd' : 'non-zero';
  const whole = (): void => {
    for (const ring of rings) path(doc, ring, true);
  };
  const ground = pattern ? PATTERNS[pattern].fill : fill;
  if (ground !== undefined) {
    whole();
    doc.fill(ground, rule);
  }
  if (pattern) {
    doc.save();
    whole();
    doc.clip(rule);
    tiles(doc, pattern, rings.flat());
    doc.restore();
  }
  if (stroke !== undefined) {
    whole();
    ink(canvas, role, false);
  }
}

/** Pattern marks for the tiles in a box around these points, on one grid for the whole sheet. */
function tiles(doc: PDFKit.PDFDocument, name: keyof typeof PATTERNS, places: readonly Place[]): void {
  const { ink: colour, size, shape } = PATTERNS[name];
  const [xs, ys] = [places.map(([x]) => x), places.map(([, y]) => y)];
  const [left, right, top, bottom] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  if (shape === 'line') {
    // Lines at 45°, one tile apart: where x + y is a multiple of the tile.
    const step = size * Math.SQRT2;
    for (let sum = Math.floor((left + top) / step) * step; sum <= right + bottom; sum += step) {
      doc.moveTo(sum - top, top).lineTo(sum - bottom, bottom);
    }
    doc.lineWidth(1).undash().stroke(colour);
    return;
  }
  const first = (from: number): number => (Math.floor(from / size) + 0.5) * size;
  for (let x = first(left); x <= right; x += size) {
    for (let y = first(top); y <= bottom; y += size) doc.rect(x - 0.6, y - 0.6, 1.2, 1.2);
  }
  doc.fill(colour);
}

function ink({ doc }: Canvas, role: ShapeRole, filled: boolean): void {
  const { stroke, fill, width = 1, dash } = LOOKS[role];
  if (stroke === undefined) {
    if (filled && fill !== undefined) doc.fill(fill);
    else doc.stroke(SHEET_COLOUR);
    return;
  }
  doc.lineWidth(width);
  const [on, off] = (dash ?? '').split(' ').map(Number);
  if (on !== undefined && off !== undefined && on > 0) doc.dash(on, { space: off });
  else doc.undash();
  doc.stroke(stroke);
}

function path(doc: PDFKit.PDFDocument, places: readonly Place[], closed: boolean): void {
  const [first, ...rest] = places;
  if (!first) return;
  doc.moveTo(...first);
  for (const place of rest) doc.lineTo(...place);
  if (closed) doc.closePath();
}

const FONTS = { regular: 'regular', bold: 'bold' } as const;

export async function pdfOf({ paper, title, made, root, pages }: Pages): Promise<Uint8Array> {
  const { width, height } = sizeOf(paper);
  const moment = new Date(made);
  const doc = new PDFDocument({
    size: [width, height],
    margin: 0,
    autoFirstPage: false,
    bufferPages: true,
    pdfVersion: '1.7',
    tagged: true,
    lang: 'en-US',
    displayTitle: true,
    info: { Title: title, Creator: 'floorhand', CreationDate: moment, ModDate: moment },
  });
  const parts: Buffer[] = [];
  doc.on('data', (part: Buffer) => parts.push(part));
  const ended = new Promise<void>((resolve, reject) => {
    doc.on('end', resolve);
    doc.on('error', reject);
  });
  doc.registerFont(FONTS.regular, FONT_FILES.regular);
  doc.registerFont(FONTS.bold, FONT_FILES.bold);
  const contents = new Map<Tag, PDFKit.PDFStructureContent[]>();
  for (const page of pages) {
    doc.addPage();
    inkPage({ doc, fonts: FONTS }, page, contents);
  }
  doc.addStructure(structured(doc, root, contents));
  doc.end();
  await ended;
  return Buffer.concat(parts);
}

function inkPage(canvas: Canvas, page: Page, contents: Map<Tag, PDFKit.PDFStructureContent[]>): void {
  const { doc } = canvas;
  for (const { tag, inks } of page.marked) {
    if (inks.length === 0) continue;
    if (tag) contents.set(tag, [...(contents.get(tag) ?? []), doc.markStructureContent(tag.type)]);
    else doc.markContent('Artifact', { type: 'Layout' });
    for (const one of inks) inkOne(canvas, one);
    doc.endMarkedContent();
  }
}

function inkOne(canvas: Canvas, ink: Ink): void {
  const { doc, fonts } = canvas;
  switch (ink.kind) {
    case 'text': {
      const { x, y, text, size, bold, colour, anchor } = ink;
      doc
        .font(bold ? fonts.bold : fonts.regular)
        .fontSize(size)
        .fillColor(colour);
      const from = anchor === 'end' ? x - doc.widthOfString(text) : x;
      doc.text(text, from, y, { lineBreak: false, baseline: 'alphabetic' });
      break;
    }
    case 'rect': {
      const { x, y, width, height, fill, stroke } = ink;
      if (fill !== undefined) doc.rect(x, y, width, height).fill(fill);
      if (stroke !== undefined) doc.lineWidth(0.9).undash().rect(x, y, width, height).stroke(stroke);
      break;
    }
    case 'drawing':
      drawIn(canvas, ink.drawing, ink.x, ink.y, ink.scale);
      break;
  }
}

function structured(
  doc: PDFKit.PDFDocument,
  tag: Tag,
  contents: ReadonlyMap<Tag, PDFKit.PDFStructureContent[]>,
): PDFKit.PDFStructureElement {
  const children = [...(contents.get(tag) ?? []), ...tag.parts.map((part) => structured(doc, part, contents))];
  const options = tag.alt === undefined ? {} : { alt: tag.alt };
  const element = doc.struct(tag.type, options, children);
  element.end();
  return element;
}
