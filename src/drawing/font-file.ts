/** The bundled font's files, read by their own tables (ISO/IEC 14496-22): glyph of a character, its advance, its outline's bytes. */

import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';

/** The family name in the font's own name table. */
export const FONT_FAMILY = 'DejaVu Sans Condensed';

/** Paths of the regular and the bold face. */
export const FONT_FILES = {
  regular: createRequire(import.meta.url).resolve('dejavu-fonts-ttf/ttf/DejaVuSansCondensed.ttf'),
  bold: createRequire(import.meta.url).resolve('dejavu-fonts-ttf/ttf/DejaVuSansCondensed-Bold.ttf'),
} as const;

/** One face. Lengths are in units of the em. */
export interface Face {
  readonly unitsPerEm: number;
  /** The glyph of a character, 0 for one that the font lacks. */
  readonly glyphOf: (character: string) => number;
  readonly advance: (character: string) => number;
  /** The glyph's entry in the table glyf; empty for a space. */
  readonly outline: (glyph: number) => Buffer;
}

const faces = new Map<string, Face>();

/** The regular or the bold face, read once. Throws a RangeError when the file lacks a table. */
export function faceOf(bold: boolean): Face {
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

/** The glyph of a character by a subtable of format 12 (segmented coverage). */
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
