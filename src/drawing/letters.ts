/** Texts as the outlines of their letters: the same in every viewer, and drawn far quicker than text is set. */

import type { Place, Text } from '../reply/drawing.ts';
import { textWidth } from './font.ts';
import { faceOf } from './font-file.ts';
import { type Contour, contoursOf } from './glyph.ts';

/** The path data of a text's letters on its sheet. */
export function lettersOf(text: Text): string {
  const { x, y, size, bold, anchor, turn } = text;
  const face = faceOf(bold);
  const scale = size / face.unitsPerEm;
  const width = textWidth(text.text, size, bold);
  let along = anchor === 'start' ? 0 : anchor === 'end' ? -width : -width / 2;
  const parts: string[] = [];
  for (const character of text.text) {
    const from = along;
    // On the sheet y is down; turned, the line of writing runs up or down.
    const move = (px: number, py: number): string => {
      const [right, up] = [from + px * scale, py * scale];
      const place: Place = turn === 0 ? [x + right, y - up] : turn === -90 ? [x - up, y - right] : [x + up, y + right];
      return `${hundredths(place[0])} ${hundredths(place[1])}`;
    };
    for (const contour of contoursOf(face.glyphOf(character), bold)) parts.push(curve(contour, move));
    along += face.advance(character) * scale;
  }
  return parts.join('');
}

/** A contour as quadratic curves. */
function curve(contour: Contour, move: (x: number, y: number) => string): string {
  const [first] = contour;
  const last = contour.at(-1);
  if (!first || !last) return '';
  const middle = (a: Contour[number], b: Contour[number]) => ({ x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 });
  const start = first.on ? first : last.on ? last : middle(first, last);
  let path = `M${move(start.x, start.y)}`;
  contour.forEach((point, i) => {
    if (point.on) {
      if (i > 0 && contour[i - 1]?.on) path += `L${move(point.x, point.y)}`;
      return;
    }
    const next = contour[i + 1] ?? (first.on ? first : start === last ? last : { ...start, on: true });
    const end = next.on ? next : middle(point, next);
    path += `Q${move(point.x, point.y)} ${move(end.x, end.y)}`;
  });
  return `${path}Z`;
}

function hundredths(value: number): number {
  return Math.round(value * 100) / 100;
}
