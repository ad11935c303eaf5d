/** A line of rooms in which no shape was found: what the asker probably meant, and what is missing. */

import {
  areaAlone,
  negativeSide,
  noRoom,
  oneSide,
  threeSides,
  walkWordMissing,
} from '../../text/room-problems-text.ts';
import type { Flaw } from './room-flaw.ts';
import { LETTER } from './room-plain.ts';
import { SIDE, SIDE_WORD, TIMES } from './room-side.ts';

/** An area as typed, as the source of a pattern for plain text. */
export const AREA = `(?<!\\d)\\d[\\d.,]{0,20} ?(?:(?:sq(?:uare)?\\.? ?(?:f(?:ee|oo)?t|m|y|in)|sqm|sqft|sf|qm|f(?:ee|oo)?t ?(?:²|\\^?2)|m ?(?:²|\\^?2))[${LETTER}]*\\.?)`;

const AREA_ALONE = new RegExp(AREA);
const THREE = new RegExp(
  `(?<!\\d)(?<a>${SIDE})${SIDE_WORD}${TIMES}(?<b>${SIDE})${SIDE_WORD}(?:${TIMES}${SIDE}${SIDE_WORD})+`,
);
const NEGATIVE = new RegExp(`-(?<=${TIMES}-) ?(?=[\\d.,])`);
/** One side, with what should have been the other one. */
const ONE = new RegExp(
  `(?<![${LETTER}\\d])(?:[${LETTER}]+${TIMES}(?=[\\d.,½⅓⅔¼¾⅛⅜⅝⅞]))?(?<side>${SIDE})(?:${SIDE_WORD}${TIMES}[${LETTER}]*)?`,
);
const TURN = new RegExp(`(?<!\\d)${SIDE},? ?(?:turn )?(?:right|left|r|l)(?![${LETTER}])`);

/** The flaw of the line at [from, to) of `plain`; `example` is a room as this asker would type one. A side that was not typed is not mended. */
export function shapelessFlaw(text: string, plain: string, from: number, to: number, example: string): Flaw {
  const line = plain.slice(from, to);
  const typed = text.slice(from, to);
  const instead = (found: RegExpExecArray, mend: string) =>
    typed.slice(0, found.index) + mend + typed.slice(found.index + found[0].length);
  const flaw = (expected: string, ...mends: string[]): Flaw => ({ from, to, expected, mends: () => mends });
  if (AREA_ALONE.test(line)) return flaw(areaAlone());
  if (TURN.test(line)) {
    const first = line.search(/[\d½⅓⅔¼¾⅛⅜⅝⅞]/);
    return flaw(walkWordMissing(), `${typed.slice(0, first)}walk ${typed.slice(first)}`);
  }
  const negative = NEGATIVE.exec(line);
  if (negative) return flaw(negativeSide(), instead(negative, ''));
  if (THREE.test(line)) return flaw(threeSides());
  return flaw(ONE.test(line) ? oneSide() : noRoom(example));
}
