/** Words and angles that make a corner or a bay a slanted one. */

import type { Piece } from './room-piece.ts';
import { ANGLE } from './walk-steps.ts';

const SLANTED =
  /(?<![a-z])(?:diagon[a-z]*|clipped|slant(?:ed|ing)?|angled?|chamfer(?:ed)?|bevel(?:led|ed)?|straight across)(?![a-z])/;
const DEGREES = new RegExp(`(?:(?:at|of) )?${ANGLE}`, 'gi');

/** The text with every angle blanked out, place for place. */
export function withoutAngles(text: string): string {
  return text.replace(DEGREES, (angle) => ' '.repeat(angle.length));
}

/** The angles told in a piece of plain text, as typed. */
export function anglesIn({ from, to, shape }: Piece, plain: string): readonly string[] {
  return `${plain.slice(from, shape.from)} ${plain.slice(shape.to, to)}`.match(DEGREES) ?? [];
}

/** True when the words round a corner left out say that it is cut off straight. */
export function isSlantedCorner(piece: Piece | undefined, plain: string): boolean {
  if (!piece) return false;
  const { from, to, shape } = piece;
  const words = `${plain.slice(from, shape.from)} ${plain.slice(shape.to, to)}`;
  return SLANTED.test(words) || anglesIn(piece, plain).length > 0;
}

const CLIPPED = '(?:clipped|angled|slanted|diagonal)';
const WITH_CORNER = new RegExp(
  `(?<![a-z])with(?= (?:an? |one |the )?(?:${CLIPPED} corner|[^;+a-z]{0,24}(?:(?:ft|in|m|cm|x|by|and)[^;+a-z]{0,12}){0,6}(?:${CLIPPED} corner|corner (?:cut |taken )?(?:off )?(?:${CLIPPED}|diagonally))(?![a-z])))`,
  'g',
);

/** Plain text in which a corner that a room has cut off (“with a clipped corner”) is left out as any other (“less”): as long as before. */
export function cornersLess(plain: string): string {
  return plain.replace(WITH_CORNER, 'less');
}
