/** Normalizes typed text character by character, so that positions stay the same, and the patterns for sides. */

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

/** Letters of plain text for a character class; a case-insensitive \p{L} takes tens of milliseconds to compile. */
export const LETTER = 'a-z\\u00c0-\\u1fff\\u2c00-\\uffff';

/**
 * Text with curly quotes, primes, odd spaces, dashes, times signs and arrows made plain, and A to Z in lowercase; its
 * length stays the same.
 */
export function plainSigns(text: string): string {
  const lower = text.replace(/[A-Z]+/g, (capitals) => capitals.toLowerCase());
  return PLAIN.reduce((plain, [signs, sign]) => plain.replace(signs, sign), lower);
}

/** Characters no name or number contains: control characters, unpaired surrogates, and direction marks. */
const HIDDEN = /(?![\t\r\n])[\p{Cc}\p{Cs}\u200e\u200f\u202a-\u202e\u2066-\u2069]/u;

export function hiddenSign(text: string): number | undefined {
  const at = text.search(HIDDEN);
  return at < 0 ? undefined : at;
}

export function withoutHidden(text: string, instead: string): string {
  return text.replace(new RegExp(HIDDEN.source, 'gu'), instead);
}

// Patterns for one side, and for two sides with a times sign, used to find rooms and planks.

const SIGNS = '[½⅓⅔¼¾⅛⅜⅝⅞]';
const FRACTION = '\\d+ ?/ ?\\d+';
/**
 * A space or a hyphen has to separate a whole number from its fraction; without one, a long run of digits could be
 * split anywhere.
 */
const NUMBER = `(?:(?<!\\d)(?:${FRACTION}|\\d+(?:[.,]\\d+){0,3}(?:(?: ?- ?| )${FRACTION}| ?-? ?${SIGNS})?)|${SIGNS}|[.,]\\d+)`;
/** A unit's word ends where no letter follows, except the x of the next side or the turn of a walk. */
const WORD_END = `(?:(?![${LETTER}²^]|2(?![\\d.]))|(?=x ?[\\d.,]|[rl] ?\\d))`;
const FOOT = `(?:'(?!')|(?:ft\\.?|foot|feet)${WORD_END})`;
const INCH = `(?:"|''|(?:in\\.?|ins|inch|inches)${WORD_END})`;
const METRE = `(?:m|met(?:re|er)s?)${WORD_END}`;
const LESS = `(?:cm|mm|(?:centi|milli)met(?:re|er)s?)${WORD_END}`;
const YARD = `(?:yds?|yards?)${WORD_END}`;

/** Inches after feet; a bare number is inches too, unless it has a larger unit of its own. */
const REST = `${NUMBER}(?: ?-? ?${INCH}|(?! ?-? ?(?:'(?!')|(?:f|m|y|cm)[a-z]*(?![a-z]))))`;

/**
 * One length as typed with all its parts (12' 6 1/2", 12'-6", 3m80, 3 m 80 cm), as a regular expression source for
 * plain text.
 */
export const SIDE = [
  `${NUMBER}(?: ?-? ?(?:`,
  `${FOOT}(?:(?: ?-? ?|,? ?and (?=[\\d./ ]+(?:in|["'])))${REST})?`,
  `|${METRE}(?:\\d+(?!\\d)| ?\\d+ ?${LESS})?`,
  `|${INCH}|${LESS}|${YARD}`,
  '))?(?!\\d|\\.\\d| ?/ ?\\d)',
].join('');

export const TIMES = `(?: *(?:x|\\*|(?:by|auf|mal|par|sur|por)(?![${LETTER}])) *)`;

/** The direction of a side, as often typed after it; the order of the sides decides regardless. */
export const SIDE_WORD = `(?: ?\\(?(?:wide|width|w|long|length|l|deep|depth|d|across)(?![${LETTER}])\\)?)?`;

/** A pair starts where no digit, letter or other side is directly before it. */
const START = `(?<![${LETTER}\\d./])(?<!\\d ?['"a-z.]{0,12} {0,3}(?:x|\\*|by|auf|mal) {0,3})`;

/** Two sides, in groups a and b, not part of a longer product and not followed by a match of `unless`. */
export function pairPattern(unless = '(?!)'): RegExp {
  const source = `${START}(?<a>${SIDE})${SIDE_WORD}${TIMES}(?<b>${SIDE})${SIDE_WORD}(?!${TIMES}[\\d.,])(?!${unless})`;
  return new RegExp(source, 'g');
}

/** A side, or what is wrong with it: `expected` in words and `mends` for the side itself. */
type ReadSide =
  | { readonly ok: true; readonly length: Length }
  | { readonly ok: false; readonly expected: string; readonly mends: readonly string[] };

/** A side in its own unit, or in `unit` if it has none. */
export function readSide(typed: string, unit: LengthUnit, reading: Reading): ReadSide {
  const side = readLengthIn(typed, reading, unit);
  if (side.ok) return { ok: true, length: side.value };
  const [problem] = side.problems;
  return { ok: false, expected: problem.expected, mends: side.problems.flatMap(({ fix }) => fix ?? []) };
}

/** A name without its case, kinds of quotes and extra spaces, to compare it with another. */
export function folded(name: string): string {
  return name.normalize('NFKC').toLowerCase().replace(/[’‘]/g, "'").replace(/\s+/g, ' ').trim();
}
