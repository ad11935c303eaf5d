/** A drawing as SVG 1.1: every role in its color and pattern, every text escaped. */

import type { Drawing, Place, Shape, ShapeRole, Text, TextRole } from '../reply/drawing.ts';
import { FONT_FAMILY, fontFace, type PathCommand, textWidth } from './text.ts';

/** Path data of a text's letters in sheet coordinates. */
function lettersOf(text: Text): string {
  const { x, y, size, bold, anchor, turn } = text;
  const face = fontFace(bold);
  const scale = size / face.unitsPerEm;
  const width = textWidth(text.text, size, bold);
  let along = anchor === 'start' ? 0 : anchor === 'end' ? -width : -width / 2;
  const parts: string[] = [];
  for (const character of text.text) {
    const from = along;
    // On the sheet y is down; turned text runs up or down.
    const move = (px: number, py: number): string => {
      const [right, up] = [from + px * scale, py * scale];
      const place: Place = turn === 0 ? [x + right, y - up] : turn === -90 ? [x - up, y - right] : [x + up, y + right];
      return `${hundredths(place[0])} ${hundredths(place[1])}`;
    };
    const { advance, outline } = face.glyph(character);
    for (const command of outline) parts.push(pathData(command, move));
    along += advance * scale;
  }
  return parts.join('');
}

const LETTERS_OF_PATH = {
  moveTo: 'M',
  lineTo: 'L',
  quadraticCurveTo: 'Q',
  bezierCurveTo: 'C',
  closePath: 'Z',
} as const;

/** A step of an outline as path data. */
function pathData({ command, args }: PathCommand, move: (x: number, y: number) => string): string {
  const points: string[] = [];
  for (let i = 0; i + 1 < args.length; i += 2) points.push(move(args[i] ?? 0, args[i + 1] ?? 0));
  return `${LETTERS_OF_PATH[command]}${points.join(' ')}`;
}

function hundredths(value: number): number {
  return Math.round(value * 100) / 100;
}

// Colors and patterns of each role: dark on light, and distinguishable in grayscale by pattern.

export const SHEET_COLOUR = '#ffffff';
const INK = '#1d2630';
const BAND = '#dfe3e8';
const DARK = '#24384d';

/** How a surface or a line is drawn; `pattern` names one of PATTERNS. */
interface Look {
  readonly fill?: string;
  readonly pattern?: keyof typeof PATTERNS;
  readonly stroke?: string;
  readonly width?: number;
  readonly dash?: string;
}

/** Tiles laid over a fill: right-leaning lines, or dots. `size` is the side of a tile. */
export const PATTERNS = {
  hatch: { fill: '#f1c9a5', ink: '#6b3d14', size: 4, turn: 45, shape: 'line' },
  dots: { fill: '#cfe2dc', ink: '#1f5a4c', size: 4, turn: 0, shape: 'dot' },
} as const;

export const LOOKS: Readonly<Record<ShapeRole, Look>> = {
  wall: { fill: BAND },
  'wall-start': { fill: DARK },
  'wall-face': { stroke: INK, width: 1 },
  gap: { fill: SHEET_COLOUR, stroke: INK, width: 0.9 },
  'plank-whole': { fill: '#fbf8f1' },
  start: { fill: '#d9d0bd' },
  end: { fill: '#d9d0bd' },
  any: { fill: '#d9d0bd' },
  'offcut-kept': { pattern: 'dots' },
  'offcut-reused': { pattern: 'hatch' },
  standing: { fill: BAND, stroke: INK, width: 0.8 },
  transition: { stroke: '#1b5a73', width: 2.4 },
  'label-ground': { fill: SHEET_COLOUR },
  joint: { stroke: '#4f5a66', width: 0.5 },
  'floor-edge': { stroke: '#4f5a66', width: 0.6 },
  leader: { stroke: '#8a949f', width: 0.5 },
  direction: { stroke: DARK, fill: DARK, width: 1.4 },
  'page-edge': { stroke: INK, width: 1, dash: '4 3' },
  'scale-bar': { stroke: INK, width: 1.2 },
  swatch: { stroke: INK, width: 0.6 },
};

/** A text's color, and the lightest and darkest backgrounds it may be on. */
interface Lettering {
  readonly fill: string;
  readonly on: string;
}

const plain: Lettering = { fill: INK, on: SHEET_COLOUR };
const quiet: Lettering = { fill: '#46525e', on: SHEET_COLOUR };

export const LETTERING: Readonly<Record<TextRole, Lettering>> = {
  title: plain,
  fact: plain,
  dimension: { fill: INK, on: BAND },
  'dimension-start': { fill: '#ffffff', on: DARK },
  'row-number': plain,
  'run-name': plain,
  cut: plain,
  offcut: { fill: '#7a3d0c', on: SHEET_COLOUR },
  rip: { fill: '#1b5a73', on: SHEET_COLOUR },
  'direction-label': quiet,
  'rows-label': plain,
  'room-label': plain,
  'scale-label': quiet,
  legend: quiet,
  note: quiet,
};

/** Standalone with the bundled font, or inline in a page whose reader has other fonts. */
interface SvgWays {
  /** Text as outlines, so that no font is needed. */
  readonly outlined?: boolean;
  /**
   * For inline use: a prefix for ids, so that no two drawings share one. Every text gets the width it was measured at,
   * whatever the font.
   */
  readonly within?: string;
}

export function toSvg({ width, height, title, alt, shapes }: Drawing, ways: SvgWays = {}): string {
  const body = shapes.map((shape) => element(shape, ways)).join('\n');
  const patterns = Object.entries(PATTERNS).map(([name, pattern]) => tile(idOf(name, ways), pattern));
  const alone = ways.within === undefined;
  // The page's content security policy forbids style attributes.
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

/** Escapes markup and quotes for XML, and drops characters that XML 1.0 forbids. */
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

/** Sets the measured width, so that texts don't overlap because the reader's font is wider. */
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

/** Two decimals, about 1/50 mm on a phone. */
function short(value: number): string {
  return String(Math.round(value * 100) / 100);
}

// Moving figures onto a sheet; those with vertical rows are turned a quarter turn left.

/** Where shapes go. If they are turned, that comes first, as a whole that is `turnedWidth` wide before turning. */
interface Way {
  readonly dx: number;
  readonly dy: number;
  /** If set, what pointed right will point up; undefined for no turn. */
  readonly turnedWidth?: number | undefined;
}

/** The shapes in place, rounded to hundredths (about 1/50 mm on a phone). */
export function placed(shapes: readonly Shape[], way: Way): readonly Shape[] {
  const { dx, dy, turnedWidth } = way;
  const move = (place: Place): Place =>
    turnedWidth === undefined
      ? [hundredths(place[0] + dx), hundredths(place[1] + dy)]
      : [hundredths(place[1] + dx), hundredths(turnedWidth - place[0] + dy)];
  return shapes.map((shape) => moved(shape, move, turnedWidth !== undefined));
}

function moved(shape: Shape, move: (place: Place) => Place, turned: boolean): Shape {
  const { kind, role } = shape;
  switch (kind) {
    case 'line':
      return { kind, role, points: shape.points.map(move) };
    case 'lines':
      return { kind, role, lines: shape.lines.map((line) => [move(line[0]), move(line[1])]) };
    case 'rect': {
      const a = move([shape.x, shape.y]);
      const b = move([shape.x + shape.width, shape.y + shape.height]);
      const width = hundredths(Math.abs(b[0] - a[0]));
      const height = hundredths(Math.abs(b[1] - a[1]));
      return { kind, role, x: Math.min(a[0], b[0]), y: Math.min(a[1], b[1]), width, height };
    }
    case 'polygon':
      return { kind, role, rings: shape.rings.map((ring) => ring.map(move)) };
    case 'arrow':
      return { kind, role, from: move(shape.from), to: move(shape.to) };
    case 'text': {
      const at = move([shape.x, shape.y]);
      // Text never runs downward on the sheet: in figures to be turned it is horizontal or downward beforehand.
      const turn = turned ? (shape.turn === 90 ? 0 : -90) : shape.turn;
      return { ...shape, x: at[0], y: at[1], turn };
    }
  }
}
