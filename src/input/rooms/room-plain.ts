/** Typed text with plain signs, character for character, so that a place in it is the same place in what was typed. */

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
