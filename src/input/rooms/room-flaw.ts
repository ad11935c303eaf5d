/** Errors at a position in typed text and their possible corrections, turned into problems whose fix is known to parse. */

import type { Problem } from '../../reply/reply.ts';
import {
  areaAlone,
  negativeSide,
  noRoom,
  oneSide,
  threeSides,
  walkWordMissing,
} from '../../text/room-problems-text.ts';
import { drops, invents } from '../faithful.ts';
import { LETTER, SIDE, SIDE_WORD, TIMES, withoutHidden } from './room-text.ts';

/**
 * A flaw at [from, to) of the text. `mends` are replacements for that range, likeliest first; each is verified by
 * parsing.
 */
export interface Flaw {
  readonly from: number;
  readonly to: number;
  readonly expected: string;
  /** A wider range to quote when the flaw alone isn't clear. */
  readonly shown?: { readonly from: number; readonly to: number };
  mends(): readonly string[];
}

/** Corrected texts tried, so that a hopeless text costs little. */
const TRIES = 8;
const LONGEST_GOT = 120;

/**
 * A problem for each flaw in text order. Their fix is the whole text with every flaw corrected, if `reads` parses it
 * and it keeps all that was typed; otherwise there is no fix.
 */
export function problemsOf(
  flaws: readonly [Flaw, ...Flaw[]],
  text: string,
  option: string,
  reads: (text: string) => boolean,
): [Problem, ...Problem[]] {
  const fix = mended(flaws, text, reads);
  const [first, ...others] = [...flaws].sort((a, b) => a.from - b.from).map((flaw) => problem(flaw, text, option, fix));
  return first ? [first, ...others] : [problem(flaws[0], text, option, fix)];
}

function problem(flaw: Flaw, text: string, option: string, fix: string | undefined): Problem {
  const got = withoutHidden(text.slice((flaw.shown ?? flaw).from, (flaw.shown ?? flaw).to).trim(), '\ufffd');
  const signs = [...got];
  const shown = signs.length > LONGEST_GOT ? `${signs.slice(0, LONGEST_GOT).join('')}…` : got;
  return { option, got: shown, expected: flaw.expected, fix };
}

function mended(flaws: readonly Flaw[], text: string, reads: (text: string) => boolean): string | undefined {
  const mends = flaws.map((flaw) => flaw.mends());
  const rounds = Math.min(TRIES - 1, Math.max(...mends.map((of) => of.length)));
  const seen = new Set<string>();
  for (let round = 0; round <= rounds; round++) {
    const whole = withMends(flaws, mends, round === rounds ? Number.MAX_SAFE_INTEGER : round, text);
    if (seen.has(whole)) continue;
    seen.add(whole);
    if (whole !== '' && !drops(whole, text, 'line') && !invents(whole, [text]) && reads(whole)) return whole;
  }
  return undefined;
}

/** The text with mend number `round` (or the last one) applied to every flaw. */
function withMends(flaws: readonly Flaw[], mends: readonly (readonly string[])[], round: number, text: string): string {
  const places = flaws
    .map((flaw, i) => ({ flaw, mend: mends[i]?.[Math.min(round, (mends[i]?.length ?? 1) - 1)] }))
    .sort((a, b) => a.flaw.from - b.flaw.from);
  let whole = '';
  let done = 0;
  for (const { flaw, mend } of places) {
    if (flaw.from < done || mend === undefined) continue;
    whole += `${text.slice(done, flaw.from)}${mend}${/\s$/.test(text.slice(flaw.from, flaw.to)) ? ' ' : ''}`;
    done = flaw.to;
  }
  return (whole + text.slice(done))
    .replace(/(?<! ) *,(?: *,)+/g, ',')
    .replace(/^[\s,;]+|(?<![\s,;])[\s,;]+$/g, '')
    .replace(/ +(?=[,; ])/g, '');
}

// A line without a room shape: what was probably meant, and what is missing.

/** An area as typed, as a regular expression source for plain text. */
export const AREA = `(?<!\\d)\\d[\\d.,]{0,20} ?(?:(?:sq(?:uare)?\\.? ?(?:f(?:ee|oo)?t|m|y|in)|sqm|sqft|sf|qm|f(?:ee|oo)?t ?(?:²|\\^?2)|m ?(?:²|\\^?2))[${LETTER}]*\\.?)`;

const AREA_ALONE = new RegExp(AREA);
const THREE = new RegExp(
  `(?<!\\d)(?<a>${SIDE})${SIDE_WORD}${TIMES}(?<b>${SIDE})${SIDE_WORD}(?:${TIMES}${SIDE}${SIDE_WORD})+`,
);
const NEGATIVE = new RegExp(`-(?<=${TIMES}-) ?(?=[\\d.,])`);
/** One side, and what should have been the other. */
const ONE = new RegExp(
  `(?<![${LETTER}\\d])(?:[${LETTER}]+${TIMES}(?=[\\d.,½⅓⅔¼¾⅛⅜⅝⅞]))?(?<side>${SIDE})(?:${SIDE_WORD}${TIMES}[${LETTER}]*)?`,
);
const TURN = new RegExp(`(?<!\\d)${SIDE},? ?(?:turn )?(?:right|left|r|l)(?![${LETTER}])`);

/**
 * The flaw of the line at [from, to) of `plain`; `example` is a room in the user's units. A missing side isn't made up.
 */
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
