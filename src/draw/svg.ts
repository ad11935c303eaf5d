/** A drawing as SVG 1.1 text: every role in its colour and pattern, every text escaped. */

import type { Drawing, Place, Shape, ShapeRole } from '../reply/drawing.ts';
import { FONT_FAMILY } from './font-file.ts';
import { lettersOf } from './letters.ts';
import { LETTERING, LOOKS, PATTERNS, SHEET_COLOUR } from './palette.ts';

/** The SVG of a drawing, in sheet units. With `outlined`, texts are the outlines of their letters and no font is needed. */
export function toSvg({ width, height, title, alt, shapes }: Drawing, { outlined = false } = {}): string {
  const body = shapes.map((shape) => element(shape, outlined)).join('\n');
  const patterns = Object.entries(PATTERNS).map(([name, pattern]) => tile(name, pattern));
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}" role="img">`,
    `<title>${escaped(title)}</title>`,
    `<desc>${escaped(alt)}</desc>`,
    `<defs>${patterns.join('\n')}</defs>`,
    `<rect width="${width}" height="${height}" fill="${SHEET_COLOUR}"/>`,
    `<g font-family="${FONT_FAMILY}" style="font-kerning:none;font-variant-ligatures:none">`,
    body,
    '</g>',
    '</svg>',
  ].join('\n');
}

/** The text as it stands in XML: markup and quotes as entities, characters that XML 1.0 forbids left out. */
export function escaped(text: string): string {
  const allowed = [...text].filter((character) => {
    const code = character.codePointAt(0) ?? 0;
    if (code < 0x20) return code === 9 || code === 10 || code === 13;
    return (code < 0xd800 || code > 0xdfff) && code !== 0xfffe && code !== 0xffff;
  });
  const entities: Readonly<Record<string, string>> = {
    '&': '&amp;',
    '<': '&lt;',
    '>': '&gt;',
    '"': '&quot;',
    "'": '&#39;',
  };
  return allowed.map((character) => entities[character] ?? character).join('');
}

function element(shape: Shape, outlined: boolean): string {
  switch (shape.kind) {
    case 'line':
      return `<path d="${path(shape.points)}"${paint(shape.role, false)}/>`;
    case 'lines':
      return `<path d="${shape.lines.map(path).join('')}"${paint(shape.role, false)}/>`;
    case 'rect': {
      const { x, y, width, height, role } = shape;
      return `<rect x="${short(x)}" y="${short(y)}" width="${short(width)}" height="${short(height)}"${paint(role, true)}/>`;
    }
    case 'polygon':
      return `<path d="${closed(shape.rings)}" fill-rule="evenodd"${paint(shape.role, true)}/>`;
    case 'arrow':
      return arrow(shape.from, shape.to, shape.role);
    case 'text': {
      if (outlined) return `<path d="${lettersOf(shape)}" fill="${LETTERING[shape.role].fill}"/>`;
      const { role, x, y, text, size, bold, anchor, turn } = shape;
      const turned = turn === 0 ? '' : ` transform="rotate(${turn} ${short(x)} ${short(y)})"`;
      const weight = bold ? ' font-weight="bold"' : '';
      const at = anchor === 'start' ? '' : ` text-anchor="${anchor}"`;
      return `<text x="${short(x)}" y="${short(y)}" font-size="${size}"${weight}${at} fill="${LETTERING[role].fill}"${turned}>${escaped(text)}</text>`;
    }
  }
}

function arrow([ax, ay]: Place, [bx, by]: Place, role: ShapeRole): string {
  const length = Math.hypot(bx - ax, by - ay);
  if (length === 0) return '';
  const [dx, dy] = [(bx - ax) / length, (by - ay) / length];
  const head = Math.min(6, length / 2);
  const base: Place = [bx - dx * head, by - dy * head];
  const corner = (side: 1 | -1): Place => [base[0] - side * dy * head * 0.55, base[1] + side * dx * head * 0.55];
  const { fill = 'none' } = LOOKS[role];
  return `<path d="${path([[ax, ay], base])}"${paint(role, false)}/><path d="${closed([[[bx, by], corner(1), corner(-1)]])}" fill="${fill}"/>`;
}

function paint(role: ShapeRole, surface: boolean): string {
  const { fill, pattern, stroke, width = 1, dash } = LOOKS[role];
  const filling = surface ? (pattern ? `url(#${pattern})` : (fill ?? 'none')) : 'none';
  const line = stroke === undefined ? '' : ` stroke="${stroke}" stroke-width="${width}"`;
  return ` fill="${filling}"${line}${dash === undefined ? '' : ` stroke-dasharray="${dash}"`}`;
}

function tile(name: string, { fill, ink, size, turn, shape }: (typeof PATTERNS)[keyof typeof PATTERNS]): string {
  const mark =
    shape === 'line'
      ? `<rect width="1" height="${size}" fill="${ink}"/>`
      : `<circle cx="${size / 2}" cy="${size / 2}" r="0.7" fill="${ink}"/>`;
  return `<pattern id="${name}" width="${size}" height="${size}" patternUnits="userSpaceOnUse" patternTransform="rotate(${turn})"><rect width="${size}" height="${size}" fill="${fill}"/>${mark}</pattern>`;
}

function path(points: readonly Place[]): string {
  return points.map(([x, y], i) => `${i === 0 ? 'M' : 'L'}${short(x)} ${short(y)}`).join('');
}

function closed(rings: readonly (readonly Place[])[]): string {
  return rings.map((ring) => `${path(ring)}Z`).join('');
}

/** Two decimals: a fiftieth of a millimetre on a phone. */
function short(value: number): string {
  return String(Math.round(value * 100) / 100);
}
