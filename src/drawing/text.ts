/** Text in drawings: the fonts, how wide words are, and how they are set. */

import { createRequire } from 'node:module';
import { type Font, openSync } from 'fontkit';
import type { Text, TextRole } from '../reply/drawing.ts';

/** The family name in the font's own name table. */
export const FONT_FAMILY = 'DejaVu Sans Condensed';

/** Paths of the regular and the bold face. */
export const FONT_FILES = {
  regular: createRequire(import.meta.url).resolve('dejavu-fonts-ttf/ttf/DejaVuSansCondensed.ttf'),
  bold: createRequire(import.meta.url).resolve('dejavu-fonts-ttf/ttf/DejaVuSansCondensed-Bold.ttf'),
} as const;

/** One face of the font. */
interface Face {
  readonly unitsPerEm: number;
  /** The glyph of a character, read once: a box where the font lacks it. */
  readonly glyph: (character: string) => Glyph;
  readonly has: (character: string) => boolean;
}

/** Advance and outline in em units, y up. */
interface Glyph {
  readonly advance: number;
  readonly outline: readonly PathCommand[];
}

export type PathCommand = PathCommands[number];
type PathCommands = ReturnType<Font['getGlyph']>['path']['commands'];

const faces = new Map<string, Face>();

/** The regular or the bold face, read once. Throws if its file cannot be read. */
export function fontFace(bold: boolean): Face {
  const path = bold ? FONT_FILES.bold : FONT_FILES.regular;
  const known = faces.get(path);
  if (known) return known;
  const font = openSync(path) as Font;
  const glyphs = new Map<string, Glyph>();
  const face: Face = {
    unitsPerEm: font.unitsPerEm,
    glyph(character) {
      const before = glyphs.get(character);
      if (before) return before;
      const { advanceWidth, path } = font.glyphForCodePoint(character.codePointAt(0) ?? 0);
      const glyph = { advance: advanceWidth, outline: path.commands };
      glyphs.set(character, glyph);
      return glyph;
    },
    has: (character) => font.hasGlyphForCodePoint(character.codePointAt(0) ?? 0),
  };
  faces.set(path, face);
  return face;
}

/**
 * How far letters and digits of this font extend above and below the baseline, as a fraction of the size: `b` 0.76, `p`
 * 0.24.
 */
export const ASCENT = 0.77;
export const DESCENT = 0.24;

/** Stands in for a character the font lacks. */
const MISSING = '□';

/** Width of a text in the unit of `size`, without kerning or ligatures. */
export function textWidth(text: string, size: number, bold: boolean): number {
  const face = fontFace(bold);
  let width = 0;
  for (const character of text) width += face.glyph(character).advance;
  return (width / face.unitsPerEm) * size;
}

/**
 * The text limited to characters the font has: combining marks and variation selectors are dropped, anything else
 * becomes a box.
 */
export function drawable(text: string): string {
  if (/^[ -~]*$/.test(text)) return text;
  const { has } = fontFace(false);
  return [...text.normalize('NFC')]
    .filter((character) => !/\p{M}|\p{Cf}|\p{Cc}|\p{Cs}/u.test(character))
    .map((character) => (has(character) ? character : MISSING))
    .join('');
}

/** An upright box: x to the right, y down. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** Smallest text size in sheet units that is readable on a phone held at arm's length. */
export const SMALL = 9;

interface Style {
  readonly size?: number;
  readonly bold?: boolean;
  readonly anchor?: Text['anchor'];
  readonly turn?: Text['turn'];
}

/** A text with its anchor on the baseline at (x, y). */
export function write(role: TextRole, text: string, x: number, y: number, style: Style = {}): Text {
  const { size = SMALL, bold = false, anchor = 'start', turn = 0 } = style;
  return { kind: 'text', role, x, y, text: drawable(text), size, bold, anchor, turn };
}

/** Baseline for a text whose digits are centered on `y`. */
export function baseline(y: number, size = SMALL): number {
  return y + size * 0.365;
}

export function textBox({ x, y, text, size, bold, anchor, turn }: Text): Box {
  const width = textWidth(text, size, bold);
  const before = anchor === 'start' ? 0 : anchor === 'end' ? width : width / 2;
  const [left, right, up, down] = [-before, width - before, ASCENT * size, DESCENT * size];
  if (turn === 0) return { left: x + left, right: x + right, top: y - up, bottom: y + down };
  if (turn === -90) return { left: x - up, right: x + down, top: y - right, bottom: y - left };
  return { left: x - down, right: x + up, top: y + left, bottom: y + right };
}

/** True when two boxes overlap by more than an edge, or are closer than `apart`. */
export function meet(a: Box, b: Box, apart = 0): boolean {
  return a.left < b.right + apart && b.left < a.right + apart && a.top < b.bottom + apart && b.top < a.bottom + apart;
}

/** Lines no wider than `width`: broken at spaces, and inside a word only if it is too long. */
export function wrapped(text: string, size: number, bold: boolean, width: number): readonly string[] {
  const fits = (line: string): boolean => textWidth(line, size, bold) <= width;
  const lines: string[] = [];
  let line = '';
  for (const word of drawable(text).split(' ')) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (fits(longer)) {
      line = longer;
      continue;
    }
    if (line !== '') lines.push(line);
    line = '';
    for (const character of word) {
      if (line !== '' && !fits(line + character)) {
        lines.push(line);
        line = '';
      }
      line += character;
    }
  }
  return line === '' ? lines : [...lines, line];
}

/** Positions closest in total to the wanted ones (ascending), with neighbors at least `apart` from each other. */
export function spread(wanted: readonly number[], apart: number): readonly number[] {
  // After subtracting i × apart, "at least apart" means "never decreasing"; the closest such sequence comes from
  // pooling neighbors.
  const pools: { sum: number; count: number }[] = [];
  wanted.forEach((level, i) => {
    let pool = { sum: level - i * apart, count: 1 };
    for (let last = pools.at(-1); last && last.sum / last.count > pool.sum / pool.count; last = pools.at(-1)) {
      pool = { sum: last.sum + pool.sum, count: last.count + pool.count };
      pools.pop();
    }
    pools.push(pool);
  });
  return pools.flatMap(({ sum, count }) => Array<number>(count).fill(sum / count)).map((level, i) => level + i * apart);
}
