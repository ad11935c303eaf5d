/** The bundled font: character widths, glyph outlines, and which characters it has. */

import { createRequire } from 'node:module';
import { type Font, openSync } from 'fontkit';

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
