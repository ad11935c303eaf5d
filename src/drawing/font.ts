/** The bundled font: character widths, glyph outlines, and which characters it has. */

import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';

// The font files, read from their own tables (ISO/IEC 14496-22).

/** The family name in the font's own name table. */
export const FONT_FAMILY = 'DejaVu Sans Condensed';

/** Paths of the regular and the bold face. */
export const FONT_FILES = {
  regular: createRequire(import.meta.url).resolve('dejavu-fonts-ttf/ttf/DejaVuSansCondensed.ttf'),
  bold: createRequire(import.meta.url).resolve('dejavu-fonts-ttf/ttf/DejaVuSansCondensed-Bold.ttf'),
} as const;

/** One face. Lengths are fractions of the em. */
interface Face {
  readonly unitsPerEm: number;
  /** The glyph of a character, 0 if the font lacks it. */
  readonly glyphOf: (character: string) => number;
  readonly advance: (character: string) => number;
  /** The glyph's entry in the glyf table; empty for a space. */
  readonly outline: (glyph: number) => Buffer;
}

const faces = new Map<string, Face>();

/** The regular or the bold face, read once. Throws a RangeError if the file lacks a table. */
export function fontFace(bold: boolean): Face {
  const path = bold ? FONT_FILES.bold : FONT_FILES.regular;
  const known = faces.get(path);
  if (known) return known;
  const face = readFace(readFileSync(path));
  faces.set(path, face);
  return face;
}

function readFace(file: Buffer): Face {
  const table = (tag: string): number => {
    for (let i = 0; i < file.readUInt16BE(4); i++) {
      const record = 12 + 16 * i;
      if (file.toString('latin1', record, record + 4) === tag) return file.readUInt32BE(record + 8);
    }
    throw new RangeError(`the font has no table ${tag}`);
  };
  const [head, hmtx, loca, glyf] = [table('head'), table('hmtx'), table('loca'), table('glyf')];
  const advances = file.readUInt16BE(table('hhea') + 34);
  const long = file.readInt16BE(head + 50) === 1;
  const start = (glyph: number): number =>
    glyf + (long ? file.readUInt32BE(loca + 4 * glyph) : 2 * file.readUInt16BE(loca + 2 * glyph));
  const glyphOf = remembered(readCharacters(file, table('cmap')));
  return {
    unitsPerEm: file.readUInt16BE(head + 18),
    glyphOf,
    // Glyphs past the last advance share it.
    advance: (character) => file.readUInt16BE(hmtx + 4 * Math.min(glyphOf(character), advances - 1)),
    outline: (glyph) => file.subarray(start(glyph), start(glyph + 1)),
  };
}

function remembered(glyphOf: (code: number) => number): (character: string) => number {
  const known = new Map<string, number>();
  return (character) => {
    const before = known.get(character);
    if (before !== undefined) return before;
    const glyph = glyphOf(character.codePointAt(0) ?? 0);
    known.set(character, glyph);
    return glyph;
  };
}

/** Character to glyph, from a cmap subtable of format 12 (segmented coverage). */
function readCharacters(file: Buffer, cmap: number): (code: number) => number {
  for (let i = 0; i < file.readUInt16BE(cmap + 2); i++) {
    const subtable = cmap + file.readUInt32BE(cmap + 4 + 8 * i + 4);
    if (file.readUInt16BE(subtable) !== 12) continue;
    const groups = Array.from({ length: file.readUInt32BE(subtable + 12) }, (_, k) => {
      const group = subtable + 16 + 12 * k;
      return {
        first: file.readUInt32BE(group),
        last: file.readUInt32BE(group + 4),
        glyph: file.readUInt32BE(group + 8),
      };
    });
    return (code) => {
      const group = groups.find(({ last }) => code <= last);
      return group && code >= group.first ? group.glyph + code - group.first : 0;
    };
  }
  throw new RangeError('the font maps no characters by segments');
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
  for (const character of text) width += face.advance(character);
  return (width / face.unitsPerEm) * size;
}

/**
 * The text limited to characters the font has: combining marks and variation selectors are dropped, anything else
 * becomes a box.
 */
export function drawable(text: string): string {
  if (/^[ -~]*$/.test(text)) return text;
  const { glyphOf } = fontFace(false);
  return [...text.normalize('NFC')]
    .filter((character) => !/\p{M}|\p{Cf}|\p{Cc}|\p{Cs}/u.test(character))
    .map((character) => (glyphOf(character) === 0 ? MISSING : character))
    .join('');
}

// Glyph outlines: the glyf table (ISO/IEC 14496-22) as curves.

/** A point of a contour in em units, y up. Between two off-curve points there is an implied on-curve point halfway. */
interface ContourPoint {
  readonly x: number;
  readonly y: number;
  readonly on: boolean;
}

export type Contour = readonly ContourPoint[];

const known = { regular: new Map<number, readonly Contour[]>(), bold: new Map<number, readonly Contour[]>() };

/** The contours of a glyph; none for a space. */
export function contoursOf(glyph: number, bold: boolean): readonly Contour[] {
  const cache = bold ? known.bold : known.regular;
  const before = cache.get(glyph);
  if (before) return before;
  const data = fontFace(bold).outline(glyph);
  const contours = data.length === 0 ? [] : data.readInt16BE(0) < 0 ? composed(data, bold) : simple(data);
  cache.set(glyph, contours);
  return contours;
}

/** A simple glyph: ends of contours, instructions (skipped), flags with repeats, then x and y as deltas. */
function simple(data: Buffer): readonly Contour[] {
  const ends = Array.from({ length: data.readInt16BE(0) }, (_, i) => data.readUInt16BE(10 + 2 * i));
  const count = (ends.at(-1) ?? -1) + 1;
  let at = 10 + 2 * ends.length;
  at += 2 + data.readUInt16BE(at);
  const flags: number[] = [];
  while (flags.length < count) {
    const flag = data.readUInt8(at++);
    const times = flag & 8 ? data.readUInt8(at++) + 1 : 1;
    for (let i = 0; i < times; i++) flags.push(flag);
  }
  const axis = (short: number, same: number): readonly number[] => {
    let value = 0;
    return flags.map((flag) => {
      if (flag & short) {
        const size = data.readUInt8(at++);
        value += flag & same ? size : -size;
      } else if (!(flag & same)) {
        value += data.readInt16BE(at);
        at += 2;
      }
      return value;
    });
  };
  const xs = axis(2, 16);
  const ys = axis(4, 32);
  return ends.map((end, i) => {
    const first = (ends[i - 1] ?? -1) + 1;
    return flags
      .slice(first, end + 1)
      .map((flag, k) => ({ x: xs[first + k] ?? 0, y: ys[first + k] ?? 0, on: (flag & 1) === 1 }));
  });
}

/** A glyph made of others, each moved and possibly scaled. */
function composed(data: Buffer, bold: boolean): readonly Contour[] {
  const contours: Contour[] = [];
  let at = 10;
  let flags: number;
  do {
    flags = data.readUInt16BE(at);
    const glyph = data.readUInt16BE(at + 2);
    at += 4;
    const words = flags & 1;
    const [dx, dy] = words
      ? [data.readInt16BE(at), data.readInt16BE(at + 2)]
      : [data.readInt8(at), data.readInt8(at + 1)];
    at += words ? 4 : 2;
    const count = flags & 8 ? 1 : flags & 64 ? 2 : flags & 128 ? 4 : 0;
    const scales = Array.from({ length: count }, (_, i) => data.readInt16BE(at + 2 * i) / 2 ** 14);
    at += 2 * count;
    const [a = 1, b = count === 4 ? 0 : a, c = 0, d = 1] = scales;
    const [xx, xy, yx, yy] = count === 4 ? [a, b, c, d] : [a, 0, 0, b];
    for (const contour of contoursOf(glyph, bold)) {
      contours.push(contour.map(({ x, y, on }) => ({ x: x * xx + y * yx + dx, y: x * xy + y * yy + dy, on })));
    }
  } while (flags & 32);
  return contours;
}
