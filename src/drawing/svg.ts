/** A drawing as SVG 1.1 text: every role in its colour and pattern, every text escaped. */

import type { Drawing, Place, Shape, ShapeRole } from '../reply/drawing.ts';
import { textWidth } from './font.ts';
import { FONT_FAMILY } from './font-file.ts';
import { lettersOf } from './letters.ts';
import { LETTERING, LOOKS, PATTERNS, SHEET_COLOUR } from './palette.ts';

/** How a drawing is written: by itself with the font at hand, or within a page whose reader has other fonts. */
export interface SvgWays {
  /** Texts as the outlines of their letters: no font is needed. */
  readonly outlined?: boolean;
  /** Within a page: what its ids begin with, so that no two drawings share one. Every text is set as wide as it was measured, in whatever font. */
  readonly within?: string;
}

/** The SVG of a drawing, in sheet units. */
export function toSvg({ width, height, title, alt, shapes }: Drawing, ways: SvgWays = {}): string {
  const body = shapes.map((shape) => element(shape, ways)).join('\n');
  const patterns = Object.entries(PATTERNS).map(([name, pattern]) => tile(idOf(name, ways), pattern));
  const alone = ways.within === undefined;
  // A page's own rules forbid styles that stand in an attribute.
  const style = alone ? ' style="font-kerning:none;font-variant-ligatures:none"' : '';
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}" role="img">`,
    `<title>${escaped(title)}</title>`,
    `<desc>${escaped(alt)}</desc>`,
    `<defs>${patterns.join('\n')}</defs>`,
    `<rect width="${width}" height="${height}" fill="${SHEET_COLOUR}"/>`,
    `<g font-family="${alone ? FONT_FAMILY : `${FONT_FAMILY}, sans-serif`}"${style}>`,
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

function idOf(name: string, { within = '' }: SvgWays): string {
  return `${within}${name}`;
}

function element(shape: Shape, ways: SvgWays): string {
  switch (shape.kind) {
    case 'line':
      return `<path d="${path(shape.points)}"${paint(shape.role, false, ways)}/>`;
    case 'lines':
      return `<path d="${shape.lines.map(path).join('')}"${paint(shape.role, false, ways)}/>`;
    case 'rect': {
      const { x, y, width, height, role } = shape;
      return `<rect x="${short(x)}" y="${short(y)}" width="${short(width)}" height="${short(height)}"${paint(role, true, ways)}/>`;
    }
    case 'polygon':
      return `<path d="${closed(shape.rings)}" fill-rule="evenodd"${paint(shape.role, true, ways)}/>`;
    case 'arrow':
      return arrow(shape, ways);
    case 'text': {
      if (ways.outlined) return `<path d="${lettersOf(shape)}" fill="${LETTERING[shape.role].fill}"/>`;
      const { role, x, y, text, size, bold, anchor, turn } = shape;
      const turned = turn === 0 ? '' : ` transform="rotate(${turn} ${short(x)} ${short(y)})"`;
      const weight = bold ? ' font-weight="bold"' : '';
      const at = anchor === 'start' ? '' : ` text-anchor="${anchor}"`;
      const fixed = ways.within === undefined ? '' : asMeasured(text, size, bold);
      return `<text x="${short(x)}" y="${short(y)}" font-size="${size}"${weight}${at}${fixed} fill="${LETTERING[role].fill}"${turned}>${escaped(text)}</text>`;
    }
  }
}

/** As wide as it was measured: no text runs into another because the reader's font is wider. */
function asMeasured(text: string, size: number, bold: boolean): string {
  const width = textWidth(text, size, bold);
  return width > 0 ? ` textLength="${short(width)}" lengthAdjust="spacingAndGlyphs"` : '';
}

function arrow({ from, to, role }: Extract<Shape, { readonly kind: 'arrow' }>, ways: SvgWays): string {
  const [[ax, ay], [bx, by]] = [from, to];
  const length = Math.hypot(bx - ax, by - ay);
  if (length === 0) return '';
  const [dx, dy] = [(bx - ax) / length, (by - ay) / length];
  const head = Math.min(6, length / 2);
  const base: Place = [bx - dx * head, by - dy * head];
  const corner = (side: 1 | -1): Place => [base[0] - side * dy * head * 0.55, base[1] + side * dx * head * 0.55];
  const { fill = 'none' } = LOOKS[role];
  return `<path d="${path([[ax, ay], base])}"${paint(role, false, ways)}/><path d="${closed([[[bx, by], corner(1), corner(-1)]])}" fill="${fill}"/>`;
}

function paint(role: ShapeRole, surface: boolean, ways: SvgWays): string {
  const { fill, pattern, stroke, width = 1, dash } = LOOKS[role];
  const filling = surface ? (pattern ? `url(#${idOf(pattern, ways)})` : (fill ?? 'none')) : 'none';
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
