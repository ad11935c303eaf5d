/** How one side, and two sides with a times sign between them, are typed: the patterns rooms and planks are found by. */

import type { Length } from '../core/length.ts';
import type { LengthUnit } from './length.ts';
import { readLengthIn } from './length.ts';
import type { Reading } from './reading.ts';

const FRACTION = '(?:\\d{1,3} ?/ ?\\d{1,3}|[½⅓⅔¼¾⅛⅜⅝⅞])';
const NUMBER = `(?:\\d{1,9}(?:[.,]\\d{1,9}){0,3}(?: ?-? ?${FRACTION})?|${FRACTION}|[.,]\\d{1,9})`;
/** A unit's word ends where no letter follows, but for the x of the next side. */
const WORD_END = '(?!\\p{L}|[²2^](?![\\d.]))';
const unitOf = (words: string) => `(?: ?-? ?(?:${words})(?:${WORD_END}|(?=x ?[\\d.,])|(?=[rl] ?\\d)))`;
const FOOT = `(?:(?: ?'(?!'))|${unitOf('ft\\.?|foot|feet')})`;
const INCH = `(?: ?(?:"|'')|${unitOf('in\\.?|ins|inch|inches')})`;
const METRE = unitOf('m|met(?:re|er)s?');
const LESS = unitOf('cm|mm|centimet(?:re|er)s?|millimet(?:re|er)s?');

/** Inches after feet; a number alone is inches too, unless it has a greater unit of its own. */
const REST = `${NUMBER}(?:${INCH}|(?! ?-? ?(?:'(?!')|(?:ft|foot|feet|met(?:er|re)s?|m|cm|mm|yds?|yards?)(?!\\p{L}))))`;

/** One length as typed, its parts together (12' 6 1/2", 12'-6", 3m80, 3 m 80 cm), as the source of a pattern with flags iu. */
export const SIDE = [
  '(?:',
  `${NUMBER}${FOOT}(?: ?-? ?${REST}|,? ?(?:and )?${NUMBER}${INCH})?`,
  `|${NUMBER}${INCH}`,
  `|${NUMBER}${METRE}(?:\\d{1,3}(?!\\d)| ?${NUMBER}${LESS})?`,
  `|${NUMBER}${LESS}`,
  `|${NUMBER}${unitOf('yd|yds|yards?')}`,
  `|${NUMBER}`,
  ')(?!\\d|\\.\\d| ?/ ?\\d)',
].join('');

/** What stands between two sides. */
export const TIMES = '(?: {0,9}(?:x|\\*|(?:by|auf|mal|par|sur|por)(?!\\p{L})) {0,9})';

/** Which way a side runs, as often typed after it; the sides keep their order whatever it says. */
export const SIDE_WORD = '(?: ?\\(?(?:wide|width|w|long|length|l|deep|depth|d|across)(?!\\p{L})\\)?)?';

/** Two sides, in groups a and b, not part of a longer product and not followed by what `unless` matches. */
export function pairPattern(unless = '(?!)'): RegExp {
  const source = `(?<![\\p{L}\\d./])(?<a>${SIDE})${SIDE_WORD}${TIMES}(?<b>${SIDE})${SIDE_WORD}(?!${TIMES}[\\d.,])(?!${unless})`;
  return new RegExp(source, 'giu');
}

/** One side read, or what is wrong with it: `expected` in words and `mends` for the side itself. */
export type ReadSide =
  | { readonly ok: true; readonly length: Length }
  | { readonly ok: false; readonly expected: string; readonly mends: readonly string[] };

/** A side in its own unit, or in `unit` when it names none. */
export function readSide(typed: string, unit: LengthUnit, reading: Reading): ReadSide {
  const side = readLengthIn(typed, reading, unit);
  if (side.ok) return { ok: true, length: side.value };
  const [problem] = side.problems;
  return { ok: false, expected: problem.expected, mends: side.problems.map(({ fix }) => fix) };
}
