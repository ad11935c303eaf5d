/** Typed text with plain signs, character for character, so that a place in it is the same place in what was typed. */

import type { Length } from '../../units/length.ts';
import { readLengthIn } from '../parse-length.ts';
import type { LengthUnit } from '../parse-number.ts';
import type { Reading } from '../reading.ts';

const PLAIN: readonly (readonly [signs: RegExp, plain: string])[] = [
  [/[^\S\r\n]|[\u200b\u2060\ufeff]/g, ' '],
  [/[\u0085\u2028\u2029]/g, '\n'],
  [/[‘’‛´`′ʹʼ]/g, "'"],
  [/[“”„‟″ʺ]/g, '"'],
  [/[‐‑‒–—−]/g, '-'],
  [/[×✕✖⨯хХ]/g, 'x'],
  [/[→⇒➔]/g, '>'],
  [/[⁄∕]/g, '/'],
  [/[；]/g, ';'],
  [/[，]/g, ','],
  [/[：]/g, ':'],
];

/** Letters of plain text, for a class in a pattern; \p{L} without regard to case takes tens of milliseconds to compile. */
export const LETTER = 'a-z\\u00c0-\\u1fff\\u2c00-\\uffff';

/**
 * The text with curly marks, primes, odd spaces, dashes, times signs and arrows made plain, and A to Z in lower case;
 * its length stays the same.
 */
export function plainSigns(text: string): string {
  const lower = text.replace(/[A-Z]+/g, (capitals) => capitals.toLowerCase());
  return PLAIN.reduce((plain, [signs, sign]) => plain.replace(signs, sign), lower);
}

/** A sign that no name or figure holds: a control character, half of a surrogate pair, or one that turns the writing round. */
const HIDDEN = /(?![\t\r\n])[\p{Cc}\p{Cs}\u200e\u200f\u202a-\u202e\u2066-\u2069]/u;

/** The place of the first sign that cannot be shown, if there is one. */
export function hiddenSign(text: string): number | undefined {
  const at = text.search(HIDDEN);
  return at < 0 ? undefined : at;
}

/** The text with every sign that cannot be shown replaced by `instead`. */
export function withoutHidden(text: string, instead: string): string {
  return text.replace(new RegExp(HIDDEN.source, 'gu'), instead);
}

// How one side, and two sides with a times sign between them, are typed: the patterns rooms and planks are
// found by.

const SIGNS = '[½⅓⅔¼¾⅛⅜⅝⅞]';
const FRACTION = '\\d+ ?/ ?\\d+';
/** A space or a hyphen parts a whole number from its fraction: without one a long run of digits could be cut anywhere. */
const NUMBER = `(?:(?<!\\d)(?:${FRACTION}|\\d+(?:[.,]\\d+){0,3}(?:(?: ?- ?| )${FRACTION}| ?-? ?${SIGNS})?)|${SIGNS}|[.,]\\d+)`;
/** A unit's word ends where no letter follows, but for the x of the next side or the turn of a walk. */
const WORD_END = `(?:(?![${LETTER}²^]|2(?![\\d.]))|(?=x ?[\\d.,]|[rl] ?\\d))`;
const FOOT = `(?:'(?!')|(?:ft\\.?|foot|feet)${WORD_END})`;
const INCH = `(?:"|''|(?:in\\.?|ins|inch|inches)${WORD_END})`;
const METRE = `(?:m|met(?:re|er)s?)${WORD_END}`;
const LESS = `(?:cm|mm|(?:centi|milli)met(?:re|er)s?)${WORD_END}`;
const YARD = `(?:yds?|yards?)${WORD_END}`;

/** Inches after feet; a number alone is inches too, unless it has a greater unit of its own. */
const REST = `${NUMBER}(?: ?-? ?${INCH}|(?! ?-? ?(?:'(?!')|(?:f|m|y|cm)[a-z]*(?![a-z]))))`;

/** One length as typed, its parts together (12' 6 1/2", 12'-6", 3m80, 3 m 80 cm), as the source of a pattern for plain text. */
export const SIDE = [
  `${NUMBER}(?: ?-? ?(?:`,
  `${FOOT}(?:(?: ?-? ?|,? ?and (?=[\\d./ ]+(?:in|["'])))${REST})?`,
  `|${METRE}(?:\\d+(?!\\d)| ?\\d+ ?${LESS})?`,
  `|${INCH}|${LESS}|${YARD}`,
  '))?(?!\\d|\\.\\d| ?/ ?\\d)',
].join('');

/** What stands between two sides. */
export const TIMES = `(?: *(?:x|\\*|(?:by|auf|mal|par|sur|por)(?![${LETTER}])) *)`;

/** Which way a side runs, as often typed after it; the sides keep their order whatever it says. */
export const SIDE_WORD = `(?: ?\\(?(?:wide|width|w|long|length|l|deep|depth|d|across)(?![${LETTER}])\\)?)?`;

/** A pair begins where no figure, letter or further side stands right before it. */
const START = `(?<![${LETTER}\\d./])(?<!\\d ?['"a-z.]{0,12} {0,3}(?:x|\\*|by|auf|mal) {0,3})`;

/** Two sides, in groups a and b, not part of a longer product and not followed by what `unless` matches. */
export function pairPattern(unless = '(?!)'): RegExp {
  const source = `${START}(?<a>${SIDE})${SIDE_WORD}${TIMES}(?<b>${SIDE})${SIDE_WORD}(?!${TIMES}[\\d.,])(?!${unless})`;
  return new RegExp(source, 'g');
}

/** One side read, or what is wrong with it: `expected` in words and `mends` for the side itself. */
type ReadSide =
  | { readonly ok: true; readonly length: Length }
  | { readonly ok: false; readonly expected: string; readonly mends: readonly string[] };

/** A side in its own unit, or in `unit` when it names none. */
export function readSide(typed: string, unit: LengthUnit, reading: Reading): ReadSide {
  const side = readLengthIn(typed, reading, unit);
  if (side.ok) return { ok: true, length: side.value };
  const [problem] = side.problems;
  return { ok: false, expected: problem.expected, mends: side.problems.flatMap(({ fix }) => fix ?? []) };
}
