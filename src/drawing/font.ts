/** Widths of text by the bundled font's own metrics, and which characters it has. */

import { faceOf } from './font-file.ts';

/** Above and below the baseline that letters and figures of this font reach, as a share of the size: `b` 0.76, `p` 0.24. */
export const ASCENT = 0.77;
export const DESCENT = 0.24;

/** Stands for a character that the font lacks. */
const MISSING = '□';

/** Width of a text in the unit of `size`, set without kerning or ligatures. */
export function textWidth(text: string, size: number, bold: boolean): number {
  const face = faceOf(bold);
  let width = 0;
  for (const character of text) width += face.advance(character);
  return (width / face.unitsPerEm) * size;
}

/** The text in characters that the font has: marks that join or vary others are left out, any other stranger is a box. */
export function drawable(text: string): string {
  if (/^[ -~]*$/.test(text)) return text;
  const { glyphOf } = faceOf(false);
  return [...text.normalize('NFC')]
    .filter((character) => !/\p{M}|\p{Cf}|\p{Cc}|\p{Cs}/u.test(character))
    .map((character) => (glyphOf(character) === 0 ? MISSING : character))
    .join('');
}
