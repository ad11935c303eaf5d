/** Pages as a PDF: text that can be read out and searched, fonts in the file, the same bytes for the same pages. */

import PDFDocument from 'pdfkit';
import { FONT_FILES } from '../drawing/font.ts';
import { type Ink, type Page, type Pages, sizeOf, type Tag } from './page.ts';
import { type Canvas, drawIn } from './pdf-drawing.ts';

const FONTS = { regular: 'regular', bold: 'bold' } as const;

/** The whole file. */
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
